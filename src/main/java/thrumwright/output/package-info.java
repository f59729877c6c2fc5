/** Turns a step sheet into pages: laid out once in points, then painted to PDF, PNG or a printer alike. */
package thrumwright.output;

/** The sheet as one HTML file. */
package thrumwright.output.html;

/** Paper, type, and the parts that are set on a page. */
package thrumwright.output.page;

/** The PDF file, written page by page, seen and heard. */
package thrumwright.output.pdf;

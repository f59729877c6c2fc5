/** Drawings as SVG, every outline once. */
package thrumwright.output.svg;

/** What drawings on a page consist of, for files that keep lines and curves: outlines, each known again wherever it lies. */
package thrumwright.output.vector;

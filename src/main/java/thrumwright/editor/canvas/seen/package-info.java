/** What of the piece is seen and where it lies: the only place where mm of the cloth become pixels. No components. */
package thrumwright.editor.canvas.seen;

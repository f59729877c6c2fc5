/** The cloth of the canvas, painted in tiles beside the event thread. */
package thrumwright.editor.canvas.cloth;

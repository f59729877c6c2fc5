/** What is done with the mouse on the canvas, from press to release. */
package thrumwright.editor.canvas.gesture;

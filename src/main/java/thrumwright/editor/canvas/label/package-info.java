/** What stands beside the canvas for each block, and where. */
package thrumwright.editor.canvas.label;

/** What the canvas shows: the cloth and, over it and beside it, marks, rules and notes. */
package thrumwright.editor.canvas.painted;

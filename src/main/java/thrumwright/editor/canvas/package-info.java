/** The piece to scale, to look at and to work on. */
package thrumwright.editor.canvas;

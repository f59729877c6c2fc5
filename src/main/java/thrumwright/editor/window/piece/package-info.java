/** The window of a piece, with all that can be done in it. */
package thrumwright.editor.window.piece;

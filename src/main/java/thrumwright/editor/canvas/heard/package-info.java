/** The canvas for those who can't see it. */
package thrumwright.editor.canvas.heard;

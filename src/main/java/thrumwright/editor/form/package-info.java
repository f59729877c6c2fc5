/** The fields beside the canvas: what they show is always what the piece says. */
package thrumwright.editor.form;

/** The window in which a piece is planned. */
package thrumwright.editor;

/** The view at the loom: one step at a time, large enough to be read while weaving, and the move in motion. */
package thrumwright.editor.loom;

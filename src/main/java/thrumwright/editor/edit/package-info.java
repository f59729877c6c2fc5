/** Editing without a window: what is open, what is chosen, what was done and can be undone. */
package thrumwright.editor.edit;

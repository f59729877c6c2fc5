/** Changing a piece step by step, without any component: edits, their history, and what a window shows. */
package thrumwright.editor.edit;

/** The shelf of blocks to take from. */
package thrumwright.editor.shelf;

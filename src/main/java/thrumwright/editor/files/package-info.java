/** Files that are chosen, dropped and opened, and what the weaver is asked about them. */
package thrumwright.editor.files;

/** The words of the window and the list of its commands; all of them come from bundles. */
package thrumwright.editor.text;

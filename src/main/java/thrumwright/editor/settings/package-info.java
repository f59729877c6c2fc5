/** What is remembered of how somebody likes to work: windows, screens and files. */
package thrumwright.editor.settings;

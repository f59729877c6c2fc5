/** The docs inside the program: pages that travel along, and which of them tells about what. */
package thrumwright.editor.help;

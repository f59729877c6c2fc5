/** Colours, fonts and pictures of the window. */
package thrumwright.editor.look;

/** The window of a class: the looms on which it weaves one piece. */
package thrumwright.editor.window.classroom;

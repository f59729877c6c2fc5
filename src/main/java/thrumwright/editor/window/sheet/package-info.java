/** The window of the step sheet: its pages, their setup, and what is written and printed. */
package thrumwright.editor.window.sheet;

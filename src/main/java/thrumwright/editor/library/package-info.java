/** The library of structures in the window: choosing one, keeping an end as one, handing one on. */
package thrumwright.editor.library;

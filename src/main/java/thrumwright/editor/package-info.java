/** The window: a canvas that draws the piece, forms for it and for the chosen block, and what was found. */
package thrumwright.editor;

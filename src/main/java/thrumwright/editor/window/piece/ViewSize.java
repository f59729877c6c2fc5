package thrumwright.editor.window.piece;

/** How much of the window the views below the picture have. */
enum ViewSize {
    /** Their row of tabs only. */
    FOLDED,
    OPEN,
    /** Most of it. */
    LARGE
}

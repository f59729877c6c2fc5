package thrumwright.editor.edit;

/** What has changed in a session. */
public enum Change {
    /** The piece, and so its plan and perhaps the selection. */
    PIECE,
    /** Only the selection. */
    SELECTION,
    /** Where it is on file, or whether it differs from there. */
    FILE
}

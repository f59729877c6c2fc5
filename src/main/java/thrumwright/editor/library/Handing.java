package thrumwright.editor.library;

import thrumwright.piece.Structure;

/** What can be done with a structure besides using it. */
public interface Handing {
    /** Writes it to a file of the weaver's choice. */
    void write(Structure structure);

    /** Gives one of the weaver's own other texts. */
    void reword(Structure structure);

    /** Takes one of the weaver's own away. */
    void remove(Structure structure);
}

package thrumwright.editor.window.piece;

import java.nio.file.Path;
import thrumwright.editor.edit.Session;
import thrumwright.store.ClassFile;

/** The window of a piece, as whoever opens and closes files knows it. */
public interface PieceWindow {
    Session session();

    void show();

    void toFront();

    /** Shows a class that weaves this piece. */
    void openClass(ClassFile file, Path path);

    /** Whether there is no class that the teacher wants to save or to go on with. */
    boolean mayLeaveClass();

    /** Takes a structure from a file into the weaver's own. */
    void bringIn(Path structure);

    /** Forgets what is being typed. */
    void forgetTyping();

    /** How many fields hold something that can't be taken. */
    int unfinished();

    void dispose();
}

package thrumwright.editor.window.piece;

import java.nio.file.Path;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Session;
import thrumwright.piece.ClassSet;
import thrumwright.store.ClassFile;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;

/** The window of a piece, as whoever opens and closes files knows it. */
public interface PieceWindow {
    Session session();

    void show();

    void toFront();

    /**
     * Shows a class that weaves this piece.
     *
     * @param held what its file held
     */
    void openClass(ClassFile file, Path path, Fingerprint held);

    /**
     * Goes on with what wasn't saved when a program ended.
     *
     * @param edit makes it of what is saved
     */
    void goOn(Journals.Left left, Edit edit);

    /** The same with the class beside this piece. */
    void goOnClass(Journals.Left left, ClassSet unsaved);

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

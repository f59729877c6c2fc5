package thrumwright.editor.window.piece;

import java.nio.file.Path;
import java.util.Optional;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.HelpDesk;

/** All windows of pieces, as one of them knows the others. */
public interface OtherWindows {
    /** The window in which a file is open already. */
    Optional<PieceWindow> showing(Path path);

    /** A window for a piece, still to be shown. */
    PieceWindow open(Session session);

    /** Closes one window after the other, as far as nobody wants to stay with what isn't saved. */
    void closeAll();

    /** Says that a window is no longer there. */
    void closed(PieceWindow window);

    /** Where the docs are read from all windows. */
    HelpDesk help();

    /** How many windows there are. */
    int count();
}

package thrumwright.editor;

import java.nio.file.Path;
import java.util.Optional;

/** What the window asks the weaver. */
interface Questions {
    /** What to do with a piece that isn't saved. */
    enum Closing {
        SAVE,
        LEAVE,
        STAY
    }

    Optional<Path> fileToOpen();

    /** @param ending such as {@code .json} */
    Optional<Path> fileToSave(String suggestion, String ending);

    /** Whether to write over a file that somebody else has changed since. */
    boolean overOthersWork(Path file);

    Closing unsaved(String title);

    /** How to begin a new piece; empty: not at all. */
    Optional<Beginning> beginning();
}

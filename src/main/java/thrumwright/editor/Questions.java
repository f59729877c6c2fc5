package thrumwright.editor;

import java.nio.file.Path;
import java.util.Optional;
import thrumwright.output.SheetForm;

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

    /**
     * Where to write the step sheet, in which form. What is there already may be written over then.
     *
     * @param form to suggest
     * @param pages how many there are
     */
    Optional<SheetTarget> sheetFile(String suggestion, SheetForm form, int pages);

    /** Whether to write over a file that somebody else has changed since. */
    boolean overOthersWork(Path file);

    Closing unsaved(String title);

    /** How to begin a new piece; empty: not at all. */
    Optional<Beginning> beginning();
}

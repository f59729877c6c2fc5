package thrumwright.editor.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.output.SheetForm;

/** What the window asks the weaver. */
public interface Questions {
    /** What to do with a piece that isn't saved. */
    enum Closing {
        SAVE,
        LEAVE,
        STAY
    }

    /** What to do with what wasn't saved when a program ended. */
    enum Recovering {
        UNSAVED,
        SAVED,
        LATER,
        FORGET
    }

    /** What somebody wants who has no piece yet. */
    enum Welcome {
        FIRST_PANEL,
        OWN,
        OPEN,
        DEMO
    }

    Optional<Path> fileToOpen();

    /** @param ending such as {@code .thrum} */
    default Optional<Path> fileToSave(String suggestion, String ending) {
        return fileToSave(suggestion, ending, List::of);
    }

    /**
     * Where to write several files.
     *
     * @param ending such as {@code .pdf}
     * @param files what will be written for a name; what is there of them already may be written over then
     */
    Optional<Path> fileToSave(String suggestion, String ending, Function<Path, List<Path>> files);

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

    /**
     * What to do with what wasn't saved when a program ended.
     *
     * @param question what it is, and how it differs from what is saved
     * @param saved whether there is something saved that could be opened in its place
     */
    Recovering left(String question, boolean saved);

    /** What to do when the program is started for the first time; empty: nothing yet. */
    Optional<Welcome> welcome();

    /** How to begin a new piece; empty: not at all. */
    Optional<Beginning> beginning();
}

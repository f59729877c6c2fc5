package thrumwright.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.editor.files.Beginning;
import thrumwright.editor.files.Questions;
import thrumwright.editor.files.SheetTarget;
import thrumwright.output.SheetForm;

/** Answers the window's questions as a test wants. */
final class Answers implements Questions {
    Optional<Path> open = Optional.empty();
    Optional<Path> save = Optional.empty();
    Optional<SheetTarget> sheet = Optional.empty();
    Closing closing = Closing.STAY;
    boolean overOthersWork;
    Optional<Beginning> beginning = Optional.empty();
    Optional<Welcome> welcome = Optional.empty();
    Recovering recovering = Recovering.LATER;
    final List<String> questions = new ArrayList<>();
    int asked;
    /** How many the sheet had when it was asked where to write it. */
    int pages;

    @Override
    public Optional<Path> fileToOpen() {
        return open;
    }

    @Override
    public Optional<Path> fileToSave(String suggestion, String ending, Function<Path, List<Path>> files) {
        asked++;
        return save;
    }

    @Override
    public Optional<SheetTarget> sheetFile(String suggestion, SheetForm form, int pages) {
        asked++;
        this.pages = pages;
        return sheet;
    }

    @Override
    public boolean overOthersWork(Path file) {
        asked++;
        return overOthersWork;
    }

    @Override
    public Closing unsaved(String title) {
        asked++;
        return closing;
    }

    @Override
    public Recovering left(String question, boolean saved) {
        asked++;
        questions.add(question);
        return recovering;
    }

    @Override
    public Optional<Welcome> welcome() {
        asked++;
        return welcome;
    }

    @Override
    public Optional<Beginning> beginning() {
        return beginning;
    }
}

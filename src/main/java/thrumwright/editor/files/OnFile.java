package thrumwright.editor.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Messages;
import thrumwright.store.FileProblem;

/**
 * An open document and its file: whether it is saved, whether somebody else has changed the file since, and what the weaver
 * is asked before anything is lost. There is one for each open document.
 */
public final class OnFile {
    /** What is open. */
    public interface Content {
        /** Where it is on file; empty if it is nowhere yet. */
        Optional<Path> path();

        /** Whether it differs from what was saved. */
        boolean dirty();

        /** What it is called. */
        String title();

        /**
         * Writes it as it is now, and knows from then on that it is on file there.
         *
         * @return what is to be said of it
         */
        String write(Path file) throws FileProblem;
    }

    private final Content content;
    private final Workplace place;
    private final Supplier<Questions> questions;
    private final Messages messages;
    private Optional<Stamp> stamp = Optional.empty();

    /** @param questions who is asked at that moment */
    public OnFile(Content content, Workplace place, Supplier<Questions> questions, Messages messages) {
        this.content = content;
        this.place = place;
        this.questions = questions;
        this.messages = messages;
        read();
    }

    /** Says that the document has just been read from its file. */
    public void read() {
        stamp = content.path().flatMap(Stamp::of);
    }

    /** The title as the name of a file, without an ending. */
    public String stem() {
        return content.title()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d]+", "-")
                .replaceAll("^-|-$", "");
    }

    /** @return whether the document is on file now */
    public boolean save() {
        if (content.path().isEmpty()) {
            return saveAs();
        }
        Path path = content.path().get();
        return (!changedElsewhere(path) || questions.get().overOthersWork(path)) && write(path);
    }

    private boolean changedElsewhere(Path path) {
        return stamp.isPresent() && !stamp.equals(Stamp.of(path)) && Files.exists(path);
    }

    /** @return whether the document is on file now */
    public boolean saveAs() {
        return questions.get().fileToSave(stem(), ".json").map(this::write).orElse(false);
    }

    private boolean write(Path path) {
        try {
            String said = content.write(path);
            stamp = Stamp.of(path);
            place.settings().used(path);
            messages.say(said);
            return true;
        } catch (FileProblem e) {
            messages.problem(place.texts().say("message.not-saved", Map.of("why", e.getMessage())));
            return false;
        }
    }

    /**
     * Whether the document may be left: it is saved, or the weaver doesn't mind.
     *
     * @param staying what to do if the weaver stays with it
     */
    public boolean mayLeave(Runnable staying) {
        if (!content.dirty()) {
            return true;
        }
        return switch (questions.get().unsaved(content.title())) {
            case SAVE -> save();
            case LEAVE -> true;
            case STAY -> {
                staying.run();
                yield false;
            }
        };
    }
}

package thrumwright.editor.files;

import java.awt.EventQueue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.editor.edit.DocumentSession;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Messages;
import thrumwright.measure.Phrase;
import thrumwright.output.FileNames;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.Ownership;
import thrumwright.store.SafeFile;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;
import thrumwright.store.keeping.Kept;
import thrumwright.store.keeping.Unsaved;

/**
 * An open document and its file: whether it is saved, whether somebody else has changed the file since, what the weaver is
 * asked before anything is lost, and what is kept of it meanwhile. There is one for each open document.
 */
public final class OnFile {
    /** What is open. */
    public interface Content {
        /** Where it is on file, and whether it differs from that. */
        DocumentSession<?> session();

        /** What it is called. */
        String title();

        /** As it is now, for whoever makes a text of it later, on another thread. */
        State now();

        /**
         * As it is to be written.
         *
         * @throws FileProblem if it couldn't be read again
         */
        Draft draft(Path file) throws FileProblem;
    }

    /**
     * The document at one moment.
     *
     * @param document which doesn't change; another one if it was changed since
     */
    public record State(Object document, Supplier<String> text) {}

    /**
     * @param text what goes into the file
     * @param written says that it is there; returns what is to be said of it
     */
    public record Draft(String text, Supplier<String> written) {}

    private final Content content;
    private final Workplace place;
    private final Supplier<Questions> questions;
    private final Messages messages;
    private final Kept kept;
    private final Claim claim;
    private final OutsideLook outside = new OutsideLook();
    private Object keptLast;

    /** @param questions who is asked at that moment */
    public OnFile(Content content, Workplace place, Supplier<Questions> questions, Messages messages) {
        this.content = content;
        this.place = place;
        this.questions = questions;
        this.messages = messages;
        this.kept =
                place.keeping().keeper().begin(why -> EventQueue.invokeLater(() -> messages.problem(why.getMessage())));
        this.claim = new Claim(place.keeping().claims());
        EventQueue.invokeLater(this::claim);
    }

    private void claim() {
        Optional<Path> path = content.session().path();
        try {
            if (claim.meetsAnother(path)) {
                messages.problem(place.texts()
                        .say(
                                "message.open-elsewhere",
                                Map.of("file", path.orElseThrow().toString())));
            }
        } catch (FileProblem e) {
            messages.problem(e.getMessage());
        }
    }

    /** Looks whether somebody has changed the file or taken it away since, and tells it once. */
    public void lookAgain() {
        DocumentSession<?> session = content.session();
        if (session.path().isPresent() && session.base().isPresent()) {
            Path path = session.path().get();
            outside.news(path, session.base().get())
                    .ifPresent(key -> messages.problem(place.texts().say(key, Map.of("file", path.toString()))));
        }
    }

    /** Keeps the document as it is now, if it isn't saved. */
    public void changed() {
        DocumentSession<?> session = content.session();
        claim();
        if (!session.dirty()) {
            keptLast = null;
            kept.saved();
            return;
        }
        State state = content.now();
        if (state.document() != keptLast) {
            keptLast = state.document();
            Optional<Path> path = session.path().map(Path::toAbsolutePath);
            Optional<Fingerprint> base = session.base();
            Instant when = Instant.now();
            kept.changed(() -> new Unsaved(path, base, when, state.text().get()));
        }
    }

    /** Goes on with what a program left that ended before it was saved. */
    public void takeOver(Journals.Left left) {
        kept.takesOver(left);
    }

    /** The document is open no longer, saved or given up. */
    public void closed() {
        kept.close();
        try {
            claim.free();
        } catch (FileProblem e) {
            messages.problem(e.getMessage());
        }
    }

    /** Where the version before the last save lies, if there is one. */
    public Optional<Path> earlier() {
        return place.keeping()
                .earlier()
                .flatMap(kept -> content.session().path().map(kept::of))
                .filter(Files::isRegularFile);
    }

    /** The title as the name of a file, without an ending. */
    public String stem() {
        return FileNames.stem(content.title());
    }

    /** @return whether the document is on file now */
    public boolean save() {
        if (content.session().path().isEmpty()) {
            return saveAs();
        }
        Path path = content.session().path().get();
        if (!mayWrite(path)) {
            return saveAs();
        }
        return (!changedElsewhere(path) || questions.get().overOthersWork(path)) && write(path);
    }

    private boolean changedElsewhere(Path path) {
        Optional<Fingerprint> base = content.session().base();
        return base.isPresent() && Files.exists(path) && !base.equals(OutsideLook.held(path));
    }

    /** Not where somebody else works on it: that would be lost, or what is saved here. */
    private boolean mayWrite(Path path) {
        try {
            if (claim.mayWrite(path)) {
                return true;
            }
            messages.problem(place.texts().say("message.open-elsewhere", Map.of("file", path.toString())));
        } catch (FileProblem e) {
            messages.problem(e.getMessage());
        }
        return false;
    }

    /** @return whether the document is on file now */
    public boolean saveAs() {
        return questions
                .get()
                .fileToSave(stem(), FileSort.of(content.now().text().get()).ending())
                .map(path -> mayWrite(path) && write(path))
                .orElse(false);
    }

    private boolean write(Path path) {
        try {
            Draft draft = content.draft(path);
            if (place.keeping().earlier().isPresent()) {
                place.keeping().earlier().get().keep(path);
            }
            Optional<Ownership> before = Ownership.of(path);
            SafeFile.write(path, draft.text());
            content.session().setBase(Optional.of(Fingerprint.of(draft.text())));
            String said = draft.written().get();
            place.settings().used(path);
            tell(said, before, path);
            return true;
        } catch (FileProblem e) {
            messages.problem(place.texts().say("message.not-saved", Map.of("why", e.getMessage())));
            return false;
        }
    }

    private void tell(String said, Optional<Ownership> before, Path path) {
        List<Phrase> changed = before.map(was -> was.changed(path)).orElse(List.of());
        if (changed.isEmpty()) {
            messages.say(said);
        } else {
            messages.problem(Stream.concat(Stream.of(said), changed.stream().map(Phrase::toString))
                    .collect(Collectors.joining(" ")));
        }
    }

    /**
     * Whether the document may be left: it is saved, or the weaver doesn't mind.
     *
     * @param staying what to do if the weaver stays with it
     */
    public boolean mayLeave(Runnable staying) {
        if (!content.session().dirty()) {
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

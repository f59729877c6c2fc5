package thrumwright.editor.window.piece;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.files.Differences;
import thrumwright.editor.files.Questions;
import thrumwright.editor.files.ReadClass;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;
import thrumwright.store.keeping.Unsaved;

/**
 * Offers what wasn't saved when a program ended beside what is on file. Neither is lost, whichever is opened: the file stays
 * as it is until somebody saves, and what wasn't saved is kept until somebody throws it away.
 */
final class Recovery {
    private static final ClassFile.PieceSource INSIDE = name -> {
        throw new IllegalStateException("a class is kept with its piece");
    };

    private final FileWork files;
    private final Workplace place;
    private final Texts texts;
    private final Messages messages;

    Recovery(FileWork files, Workplace place, Messages messages) {
        this.files = files;
        this.place = place;
        this.texts = place.texts();
        this.messages = messages;
    }

    /** Asks for one after the other. */
    void offer() {
        try {
            for (Journals.Left left : place.keeping().keeper().left()) {
                offer(left);
            }
        } catch (FileProblem e) {
            messages.problem(e.getMessage());
        }
    }

    private void offer(Journals.Left left) throws FileProblem {
        String text = left.unsaved().text();
        try {
            if (FileSort.of(text) == FileSort.CLASS) {
                offer(left, ClassFile.read(text, INSIDE));
            } else {
                offer(left, PieceFile.read(text));
            }
        } catch (FileProblem e) {
            throw SafeFile.problem(e.why(), e);
        }
    }

    private void offer(Journals.Left left, PieceFile unsaved) throws FileProblem {
        Optional<PieceFile> saved = savedPiece(left.unsaved());
        if (saved.isPresent() && saved.get().piece().equals(unsaved.piece())) {
            place.keeping().keeper().forget(left);
            return;
        }
        String title = unsaved.piece().title();
        List<String> differs =
                saved.map(file -> Differences.of(file.piece(), unsaved.piece())).orElse(List.of());
        switch (ask(left.unsaved(), title, differs, saved.isPresent())) {
            case UNSAVED -> goOn(left, saved, unsaved);
            case SAVED -> files.open(left.unsaved().file().orElseThrow());
            case FORGET -> place.keeping().keeper().forget(left);
            case LATER -> {}
        }
    }

    /** What was saved is a step back. */
    private void goOn(Journals.Left left, Optional<PieceFile> saved, PieceFile unsaved) {
        PieceFile base = saved.orElseGet(() -> new PieceFile(Beginnings.empty(UnitSystem.METRIC), unsaved.unknown()));
        Optional<Path> path = left.unsaved().file();
        files.toGoOn(base, path, left.unsaved().base()).goOn(left, edit(unsaved.piece()));
    }

    private Edit edit(Piece unsaved) {
        return Edit.of(texts.say("recover.edit"), saved -> unsaved);
    }

    private static Optional<PieceFile> savedPiece(Unsaved unsaved) {
        try {
            return unsaved.file().isEmpty()
                    ? Optional.empty()
                    : Optional.of(PieceFile.read(SafeFile.read(unsaved.file().get())));
        } catch (FileProblem e) {
            // what is there can't be opened beside it; saving will ask before it takes its place
            return Optional.empty();
        }
    }

    private void offer(Journals.Left left, ClassFile unsaved) throws FileProblem {
        Optional<ReadClass> saved = savedClass(left.unsaved());
        if (saved.isPresent() && saved.get().file().set().equals(unsaved.set())) {
            place.keeping().keeper().forget(left);
            return;
        }
        ClassSet set = unsaved.set();
        String title = set.title().isBlank() ? set.piece().title() : set.title();
        List<String> differs =
                saved.map(read -> Differences.of(read.file().set(), set)).orElse(List.of());
        switch (ask(left.unsaved(), title, differs, saved.isPresent())) {
            case UNSAVED -> goOn(left, saved, unsaved);
            case SAVED -> files.open(left.unsaved().file().orElseThrow());
            case FORGET -> place.keeping().keeper().forget(left);
            case LATER -> {}
        }
    }

    /** Beside its piece; if that has changed too, beside the piece as the class knew it, in a window of its own. */
    private void goOn(Journals.Left left, Optional<ReadClass> saved, ClassFile unsaved) {
        Optional<Path> path = left.unsaved().file();
        Optional<ReadClass> samePiece = saved.filter(
                read -> read.file().set().piece().equals(unsaved.set().piece()));
        PieceWindow window = samePiece
                .map(read ->
                        files.toGoOn(read.file().piece(), read.file().piecePath(path.orElseThrow()), read.pieceHeld()))
                .orElseGet(() -> files.toGoOn(unsaved.piece(), Optional.empty(), Optional.empty()));
        saved.ifPresent(read -> window.openClass(
                read.file(), path.orElseThrow(), left.unsaved().base().orElse(read.held())));
        window.goOnClass(left, unsaved.set());
    }

    private static Optional<ReadClass> savedClass(Unsaved unsaved) {
        try {
            Optional<Path> path = unsaved.file();
            return path.isEmpty() ? Optional.empty() : Optional.of(ReadClass.of(SafeFile.read(path.get()), path.get()));
        } catch (FileProblem e) {
            // as with a piece
            return Optional.empty();
        }
    }

    private Questions.Recovering ask(Unsaved unsaved, String title, List<String> differs, boolean saved) {
        String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(Locale.UK)
                .withZone(ZoneId.systemDefault())
                .format(unsaved.when());
        String named = title.isBlank() ? texts.say("untitled") : title;
        String question = texts.say("recover.question", Map.of("title", named, "when", when));
        return files.questions().left(question + "\n" + onFile(unsaved, saved) + differing(differs), saved);
    }

    private String onFile(Unsaved unsaved, boolean saved) {
        if (unsaved.file().isEmpty()) {
            return texts.say("recover.nowhere");
        }
        Path file = unsaved.file().get();
        String key = !saved ? "recover.gone" : changedSince(unsaved, file) ? "recover.changed" : "recover.file";
        return texts.say(key, Map.of("file", file));
    }

    private static boolean changedSince(Unsaved unsaved, Path file) {
        try {
            Optional<Fingerprint> now = Optional.of(Fingerprint.of(SafeFile.read(file)));
            return !unsaved.base().equals(now);
        } catch (FileProblem e) {
            return true;
        }
    }

    private String differing(List<String> differs) {
        if (differs.isEmpty()) {
            return "";
        }
        List<String> names =
                differs.stream().map(part -> texts.say("recover.part." + part)).toList();
        return "\n" + texts.say("recover.differs", Map.of("parts", String.join(", ", names)));
    }
}

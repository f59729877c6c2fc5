package thrumwright.editor.window.piece;

import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Questions;
import thrumwright.editor.library.Handing;
import thrumwright.editor.library.Library;
import thrumwright.editor.library.StructureDialogs;
import thrumwright.editor.library.StructureQuestions;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.sheet.SampleWarp;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.SafeFile;
import thrumwright.store.StructureFile;

/** The commands that have to do with structures. */
final class StructureWork implements Handing {
    private final Session session;
    private final Edits edits;
    private final Texts texts;
    private final Library library;
    private final Messages messages;
    private final Supplier<Questions> files;
    private final Consumer<Piece> begin;
    private final StructureQuestions questions;

    /**
     * @param files who is asked about files
     * @param begin shows a new piece
     * @param parent of dialogs
     */
    StructureWork(
            Session session,
            Edits edits,
            Workplace place,
            Messages messages,
            Supplier<Questions> files,
            Consumer<Piece> begin,
            Component parent) {
        this.session = session;
        this.edits = edits;
        this.texts = place.texts();
        this.library = place.library();
        this.messages = messages;
        this.files = files;
        this.begin = begin;
        this.questions = new StructureDialogs(parent, texts, () -> place.theme().palette(), library, this);
    }

    void addTo(Commands commands) {
        commands.add("use-structure", this::use);
        commands.add("sample-warp", this::samples);
        commands.add("keep-structure", this::keepEnd, this::something);
        commands.add("write-structure", this::writeEnd, this::something);
        commands.add("import-structure", () -> files.get().fileToOpen().ifPresent(this::bringIn));
    }

    private Place place() {
        return session.selection().place();
    }

    private boolean something() {
        return !session.piece().end(place()).blocks().isEmpty();
    }

    private void use() {
        questions
                .choose(session.piece(), place())
                .ifPresent(chosen -> session.edit(edits.structure(chosen.structure(), chosen.place())));
    }

    private void samples() {
        questions.samples(session.piece()).ifPresent(asked -> {
            try {
                begin.accept(SampleWarp.of(asked.base(), asked.edges(), texts.locale()));
            } catch (IllegalArgumentException refused) {
                messages.problem(refused.getMessage());
            }
        });
    }

    /** The end as a structure; a top is turned back to how it would begin a piece. */
    private Structure draft() {
        End end = session.piece().end(place());
        End stack = place() == Place.START ? end : end.mirrored().unforced();
        String title = session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
        String name = texts.say(
                place() == Place.START ? "describe.draft.start" : "describe.draft.top", Map.of("title", title));
        return new Structure(
                Structure.idFrom(name),
                name,
                "",
                "",
                Optional.empty(),
                session.piece().loom().uprights().isEmpty(),
                List.of(),
                texts.say("describe.draft.source"),
                stack);
    }

    private void keepEnd() {
        questions.describe(draft()).ifPresent(described -> {
            Structure named = described.withId(Structure.idFrom(described.name()));
            keep(StructureFile.of(named), "message.structure.kept");
        });
    }

    /** Asks first where another structure has the same id. */
    private void keep(StructureFile file, String message) {
        Structure structure = file.structure();
        Optional<Structure> there = library.byId(structure.id()).filter(other -> !other.equals(structure));
        StructureQuestions.Clash clash =
                there.map(other -> questions.clash(structure, other)).orElse(StructureQuestions.Clash.REPLACE);
        if (clash == StructureQuestions.Clash.LEAVE) {
            return;
        }
        StructureFile kept = clash == StructureQuestions.Clash.BOTH
                ? new StructureFile(structure.withId(library.freeId(structure.id())), file.unknown())
                : file;
        try {
            library.keep(kept);
            messages.say(texts.say(message, Map.of("name", structure.name())));
        } catch (FileProblem e) {
            messages.problem(
                    texts.say("message.structure.not-kept", Map.of("name", structure.name(), "why", e.getMessage())));
        }
    }

    private void writeEnd() {
        questions.describe(draft()).ifPresent(described -> write(described.withId(Structure.idFrom(described.name()))));
    }

    @Override
    public void write(Structure structure) {
        files.get().fileToSave(structure.id(), FileSort.STRUCTURE.ending()).ifPresent(path -> {
            try {
                SafeFile.write(path, library.toHandOn(structure).checkedText());
                messages.say(texts.say("message.structure.written", Map.of("file", path.toString())));
            } catch (FileProblem e) {
                messages.problem(texts.say("message.not-saved", Map.of("why", e.getMessage())));
            }
        });
    }

    @Override
    public void reword(Structure structure) {
        try {
            library.keep(structure);
            messages.say(texts.say("message.structure.kept", Map.of("name", structure.name())));
        } catch (FileProblem e) {
            messages.problem(
                    texts.say("message.structure.not-kept", Map.of("name", structure.name(), "why", e.getMessage())));
        }
    }

    @Override
    public void remove(Structure structure) {
        try {
            library.remove(structure.id());
            messages.say(texts.say("message.structure.removed", Map.of("name", structure.name())));
        } catch (FileProblem e) {
            messages.problem(e.getMessage());
        }
    }

    /** Takes a structure from a file into the weaver's own. */
    void bringIn(Path path) {
        try {
            StructureFile file = StructureFile.read(SafeFile.read(path));
            keep(file, "message.structure.brought");
        } catch (FileProblem e) {
            messages.problem(texts.say(
                    "message.not-opened", Map.of("file", String.valueOf(path.getFileName()), "why", e.getMessage())));
        }
    }
}

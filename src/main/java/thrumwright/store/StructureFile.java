package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import thrumwright.measure.Phrase;
import thrumwright.piece.End;
import thrumwright.piece.Structure;

/**
 * A structure as it was read from a file, with what this version didn't know of it.
 *
 * @param unknown to be given back when the structure is written again
 */
public record StructureFile(Structure structure, Unknown unknown) {
    /**
     * The version of the structure file that this program reads and writes. A field that may be left out doesn't raise
     * it: older programs keep what they don't know.
     */
    public static final int VERSION = 1;

    private static final String VERSION_FIELD = "thrumwrightStructure";
    /** Apart, so that whoever asks what sort a text is doesn't have to know all blocks. */
    private static final class Formats {
        static final Format<Structure> STRUCTURE = format();
    }

    public StructureFile {
        Objects.requireNonNull(structure);
        Objects.requireNonNull(unknown);
    }

    public static StructureFile of(Structure structure) {
        return new StructureFile(structure, Unknown.none());
    }

    /** Whether a text sets out to be a structure, and not a piece; it may be damaged all the same. */
    public static boolean isMeant(String text) {
        return text.contains("\"" + VERSION_FIELD + "\"");
    }

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static StructureFile read(String text) throws FileProblem {
        Fields fields = Fields.of(text);
        Structure structure = Formats.STRUCTURE.whole(fields);
        return new StructureFile(structure, fields.unknown());
    }

    private static Format<Structure> format() {
        var structure = new Declared<Structure>();
        var version = structure.version(VERSION_FIELD, VERSION, "structure");
        var id = structure.needed("id", Types.text("like.structure-id"), Structure::id);
        var name = structure.needed("name", Types.text("like.structure-name"), Structure::name);
        var use = structure.needed("use", Types.text("like.use"), Structure::use);
        var needs = structure.usual("needs", Types.text("like.needs"), "", Structure::needs);
        var difficulty = structure.optional("difficulty", Choices.DIFFICULTY, Structure::difficulty);
        var withoutPosts = structure.spare("withoutPosts", Types.FLAG, false, Structure::withoutPosts);
        var goodFor = structure.spare("goodFor", Types.TEXTS, List.of(), Structure::goodFor);
        var source = structure.needed("source", Types.text("like.source"), Structure::source);
        var blocks = structure.needed("blocks", BlockFormats.END, Structure::end);
        return structure.as(in -> {
            version.of(in);
            End end = blocks.of(in);
            return new Structure(
                    id.of(in),
                    name.of(in),
                    use.of(in),
                    needs.of(in),
                    difficulty.of(in),
                    withoutPosts.of(in),
                    goodFor.of(in),
                    source.of(in),
                    end);
        });
    }

    /** The whole document; the same structure makes the same text. */
    public String text() {
        return Json.write(Formats.STRUCTURE.object(structure, unknown));
    }

    /**
     * As {@link #text()}, but never a text that couldn't be read again.
     *
     * @throws FileProblem saying where and what
     */
    public String checkedText() throws FileProblem {
        String text = text();
        try {
            if (read(text).structure().equals(structure)) {
                return text;
            }
        } catch (FileProblem e) {
            throw new FileProblem("file.structure-not-kept", Map.of("why", e.why()), e);
        }
        throw new FileProblem(new Phrase("file.structure-differs"), null);
    }
}

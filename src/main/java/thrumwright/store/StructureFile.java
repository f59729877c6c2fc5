package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.piece.Difficulty;
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
    private static final class Formats extends Declared<Structure> {
        static final Format<Structure> STRUCTURE = new Formats();

        private final Entry<Integer> version = version(VERSION_FIELD, VERSION, "structure");
        private final Entry<String> id = needed("id", Types.text("like.structure-id"));
        private final Entry<String> name = needed("name", Types.text("like.structure-name"));
        private final Entry<String> use = needed("use", Types.text("like.use"));
        private final Entry<String> needs = usual("needs", Types.text("like.needs"), "");
        private final Entry<Optional<Difficulty>> difficulty = optional("difficulty", Choices.DIFFICULTY);
        private final Entry<Boolean> withoutPosts = spare("withoutPosts", Types.FLAG, false);
        private final Entry<List<String>> goodFor = spare("goodFor", Types.TEXTS, List.of());
        private final Entry<String> source = needed("source", Types.text("like.source"));
        private final Entry<End> blocks = needed("blocks", BlockFormats.END);

        @Override
        public Structure make(Fields in) throws FileProblem {
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
        }

        @Override
        public void write(Structure structure, Writing out) {
            out.put(version, VERSION).put(id, structure.id()).put(name, structure.name());
            out.put(use, structure.use()).put(needs, structure.needs()).put(difficulty, structure.difficulty());
            out.put(withoutPosts, structure.withoutPosts()).put(goodFor, structure.goodFor());
            out.put(source, structure.source()).put(blocks, structure.end());
        }
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

package thrumwright.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
        Map<String, Map<String, Node>> unknown = new HashMap<>();
        Fields fields = Fields.of(Json.read(text), unknown);
        PieceReader.version(fields, VERSION_FIELD, VERSION, "a structure");
        Structure structure = fields.made(() -> structure(fields));
        fields.done();
        return new StructureFile(structure, new Unknown(unknown));
    }

    private static Structure structure(Fields fields) throws FileProblem {
        End end = BlockReader.end(fields, "blocks", Optional.empty());
        return new Structure(
                fields.text("id", "a short name"),
                fields.text("name", "what it is called"),
                fields.text("use", "when to use it"),
                fields.text("needs", "what it asks for", ""),
                fields.optionalChoice("difficulty", Choices.DIFFICULTY),
                fields.texts("goodFor"),
                fields.text("source", "where it comes from, or “common practice, no source”"),
                end);
    }

    /** The whole document; the same structure makes the same text. */
    public String text() {
        Writing writing = new Writing()
                .with(VERSION_FIELD, VERSION)
                .with("id", structure.id())
                .with("name", structure.name())
                .with("use", structure.use())
                .with("needs", structure.needs());
        structure.difficulty().ifPresent(difficulty -> writing.with("difficulty", Choices.DIFFICULTY.text(difficulty)));
        List<Node> goodFor =
                structure.goodFor().stream().<Node>map(Node.Text::of).toList();
        if (!goodFor.isEmpty()) {
            writing.with("goodFor", new Node.Arr(goodFor, Node.Spot.NOWHERE));
        }
        return Json.write(writing.with("source", structure.source())
                .with("blocks", BlockWriter.blocks(structure.end().blocks(), unknown, "/blocks"))
                .done(unknown, ""));
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
            throw new FileProblem("The structure can't be kept as it is. " + e.getMessage(), e);
        }
        throw new FileProblem("The structure can't be kept as it is: it would read back differently.", null);
    }
}

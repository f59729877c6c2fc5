package thrumwright.store;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import thrumwright.piece.End;
import thrumwright.piece.Structure;

/** A structure on file. */
public final class StructureFile {
    /** The version of the structure file that this program reads and writes. */
    public static final int VERSION = 1;

    private StructureFile() {}

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static Structure read(String text) throws FileProblem {
        Map<String, Map<String, Node>> unknown = new HashMap<>();
        Fields fields = Fields.of(Json.read(text), unknown);
        PieceReader.version(fields, "thrumwrightStructure", VERSION, "a structure");
        return fields.made(() -> {
            End end = BlockReader.end(fields, "blocks", Optional.empty());
            return new Structure(
                    fields.text("id", "a short name"),
                    fields.text("name", "what it is called"),
                    fields.text("use", "when to use it"),
                    fields.text("needs", "what it asks for", ""),
                    fields.text("source", "where it comes from, or “common practice, no source”"),
                    end);
        });
    }

    public static String write(Structure structure) {
        return Json.write(new Writing()
                .with("thrumwrightStructure", VERSION)
                .with("id", structure.id())
                .with("name", structure.name())
                .with("use", structure.use())
                .with("needs", structure.needs())
                .with("source", structure.source())
                .with("blocks", BlockWriter.blocks(structure.end().blocks(), Unknown.none(), ""))
                .done(Unknown.none(), ""));
    }
}

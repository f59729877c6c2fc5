package thrumwright.store;

import java.util.List;
import thrumwright.piece.Loom;
import thrumwright.piece.Stash;
import thrumwright.yarn.Yarn;

/** How a weaver's looms and yarns stand in a file. */
public final class StashFile {
    /** The version that this program reads and writes. */
    public static final int VERSION = 1;

    private static final ValueType<List<Loom>> LOOMS = new Listed<>(LoomFormats.LOOM, "loom", Stash.MOST);

    private static final Format<Stash> FORMAT = new Declared<>() {
        private final Entry<Integer> version = version("thrumwrightStash", VERSION, "stash");
        private final Entry<List<Loom>> looms = spare("looms", LOOMS, List.of());
        private final Entry<List<Yarn>> yarns = spare("yarns", YarnFormats.YARNS, List.of());

        @Override
        public Stash make(Fields in) throws FileProblem {
            version.of(in);
            return new Stash(looms.of(in), yarns.of(in));
        }

        @Override
        public void write(Stash stash, Writing out) {
            out.put(version, VERSION).put(looms, stash.looms()).put(yarns, stash.yarns());
        }
    };

    private StashFile() {}

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static Stash read(String text) throws FileProblem {
        return FORMAT.whole(Fields.of(text));
    }

    /** The whole document; the same stash makes the same text. */
    public static String text(Stash stash) {
        return Json.write(FORMAT.object(stash, Unknown.none()));
    }
}

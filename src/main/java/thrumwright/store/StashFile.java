package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.piece.Loom;
import thrumwright.piece.Stash;

/** How a weaver's looms and yarns stand in a file. */
public final class StashFile {
    /** The version that this program reads and writes. */
    public static final int VERSION = 1;

    private static final ValueType<List<Loom>> LOOMS =
            Types.list(LoomFormats.LOOM, "loom", Stash.MOST, Optional.empty());
    private static final Format<Stash> FORMAT = format();

    private StashFile() {}

    private static Format<Stash> format() {
        var stash = new Declared<Stash>();
        var version = stash.version("thrumwrightStash", VERSION, "stash");
        var looms = stash.spare("looms", LOOMS, List.of(), Stash::looms);
        var yarns = stash.spare("yarns", YarnFormats.YARNS, List.of(), Stash::yarns);
        return stash.as(in -> {
            version.of(in);
            return new Stash(looms.of(in), yarns.of(in));
        });
    }

    /** @throws FileProblem with a plain sentence that says where and what would be right */
    public static Stash read(String text) throws FileProblem {
        return FORMAT.whole(Fields.of(text));
    }

    /** The whole document; the same stash makes the same text. */
    public static String text(Stash stash) {
        return Json.write(FORMAT.object(stash, Unknown.none()));
    }
}

package thrumwright.output;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;

/** Names for files that nothing in is special on any system; those of a class are kept apart by a number. */
public final class FileNames {
    private static final int LONGEST = 40;
    private static final String LISTS = "lists";
    private static final String BOOKLET = "booklet";

    /** No file may be called so on Windows, whatever its ending. */
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|com\\d|lpt\\d");

    private static final String NAMELESS = "piece";

    private FileNames() {}

    /** For the lists, every loom and the booklet. */
    static List<String> of(ClassSet set, String stem, String ending) {
        int digits = Integer.toString(set.members().size() + 1).length();
        List<String> names = new ArrayList<>();
        names.add(stem + "-" + number(0, digits) + "-" + LISTS + ending);
        for (int i = 0; i < set.members().size(); i++) {
            ClassMember member = set.members().get(i);
            String plain = plain(member.name());
            names.add(stem + "-" + number(i + 1, digits) + (plain.isEmpty() ? "" : "-" + plain) + ending);
        }
        names.add(stem + "-" + number(set.members().size() + 1, digits) + "-" + BOOKLET + ending);
        return names;
    }

    private static String number(int number, int digits) {
        return String.format(Locale.ROOT, "%0" + digits + "d", number);
    }

    /**
     * A title as the name of a file, without an ending: letters of any script and digits, at most 40 of them, with hyphens between; never
     * empty, and never the name of a device.
     */
    public static String stem(String title) {
        String stem = Normalizer.normalize(title, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\d]+", "-")
                .replaceAll("^-|-$", "");
        String brief = stem.codePointCount(0, stem.length()) <= LONGEST
                ? stem
                : stem.substring(0, stem.offsetByCodePoints(0, LONGEST)).replaceAll("-$", "");
        return brief.isEmpty() || DEVICE.matcher(brief).matches()
                ? NAMELESS + (brief.isEmpty() ? "" : "-" + brief)
                : brief;
    }

    /** “Zoë O'Brien” as “zoe-o-brien”; empty where no letter or digit is left. */
    static String plain(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST).replaceAll("-$", "");
    }
}

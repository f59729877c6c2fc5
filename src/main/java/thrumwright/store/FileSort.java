package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What sort of document a text is, by what stands in it, and what files of each sort end with; the one place that decides. */
public enum FileSort {
    PIECE(".thrum"),
    CLASS(".thrumclass"),
    STRUCTURE(".thrumstructure");

    /** What files of every sort ended with before there were endings of our own. */
    private static final String OLDER = ".json";

    private final String ending;

    FileSort(String ending) {
        this.ending = ending;
    }

    /** What a new file of this sort ends with, such as {@code .thrum}. */
    public String ending() {
        return ending;
    }

    /** What files of ours may end with, the usual ones first. */
    public static List<String> endings() {
        List<String> endings = new ArrayList<>();
        for (FileSort each : values()) {
            endings.add(each.ending);
        }
        endings.add(OLDER);
        return endings;
    }

    /** Whether a file's name ends like one of ours, in letters of any size. */
    public static boolean isOurs(String name) {
        return endingOf(name).isPresent();
    }

    /** A file's name without its ending, if that is one of ours. */
    public static String stem(String name) {
        return name.substring(
                0, name.length() - endingOf(name).map(String::length).orElse(0));
    }

    private static Optional<String> endingOf(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return endings().stream().filter(small::endsWith).findFirst();
    }

    /** What a text sets out to be; it may be damaged all the same. What is neither class nor structure is read as a piece. */
    public static FileSort of(String text) {
        if (StructureFile.isMeant(text)) {
            return STRUCTURE;
        }
        return ClassFile.isClass(text) ? CLASS : PIECE;
    }
}

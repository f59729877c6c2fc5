package thrumwright.commandline;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a file's name ends with. */
final class FileEnding {
    /** Behind the last separator, whichever system's, and not the whole name, as of a hidden file. */
    private static final Pattern ENDING = Pattern.compile("[^/\\\\](\\.[^./\\\\]+)$");

    private FileEnding() {}

    /** Such as {@code .pdf}; empty for a name without one. */
    static String of(String name) {
        Matcher found = ENDING.matcher(name);
        return found.find() ? found.group(1) : "";
    }
}

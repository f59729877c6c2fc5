package thrumwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The texts and the source that says them fit together: nothing is said that isn't there, nothing is there unsaid. */
class BundlesTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "thrumwright");
    private static final Path TEXTS = Path.of("src", "main", "resources", "thrumwright");
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z0-9.-]{2,})\"");
    private static final Pattern CONSTANT = Pattern.compile("\\b[A-Z][A-Z0-9_]*\\b");
    private static final Pattern SAID =
            Pattern.compile("(?:phrases|words|texts)\\.say\\(\\s*\"([A-Za-z0-9.-]+)\"\\s*[,)]");

    private static final List<String> CODE = new ArrayList<>();
    private static final Set<String> KEYS = new HashSet<>();

    @BeforeAll
    static void read() throws IOException {
        for (Path file : files(SOURCES, ".java")) {
            CODE.add(Files.readString(file));
        }
        for (Path file : files(TEXTS, ".properties")) {
            if (!file.endsWith("version.properties")
                    && !file.startsWith(TEXTS.resolve("editor/themes"))
                    && !file.endsWith("usage.properties")) {
                Properties bundle = new Properties();
                bundle.load(Files.newBufferedReader(file));
                KEYS.addAll(bundle.stringPropertyNames());
            }
        }
        assertThat(CODE).hasSizeGreaterThan(300);
        assertThat(KEYS).hasSizeGreaterThan(1000);
    }

    private static List<Path> files(Path under, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(under)) {
            return all.filter(file -> file.toString().endsWith(ending)).toList();
        }
    }

    @Test
    void whatIsSaidIsThere() {
        Set<String> said = new HashSet<>();
        CODE.forEach(code -> SAID.matcher(code).results().forEach(match -> said.add(match.group(1))));

        assertThat(said).hasSizeGreaterThan(200).isSubsetOf(KEYS);
    }

    /**
     * A key is said whole, or put together from parts that stand in the source: words in quotation marks and the names
     * of enum constants. A key of which a part stands nowhere can't be said.
     */
    @Test
    void whatIsThereIsSaid() {
        Set<String> parts = parts();

        assertThat(KEYS)
                .allSatisfy(key -> assertThat(madeOf(key, 0, parts)).as(key).isTrue());
        assertThat(madeOf("heading.nobody-says-this", 0, parts)).isFalse();
    }

    private static Set<String> parts() {
        Set<String> parts = new HashSet<>();
        for (String code : CODE) {
            LITERAL.matcher(code).results().forEach(match -> parts.add(match.group(1)));
            if (code.contains("enum ")) {
                Matcher constants = CONSTANT.matcher(code);
                while (constants.find()) {
                    parts.add(constants.group());
                    parts.add(constants.group().toLowerCase(Locale.ROOT).replace('_', '-'));
                }
            }
        }
        return parts;
    }

    /** Whether a key's rest is made of parts, each of which begins and ends at a point or a hyphen of the key. */
    private static boolean madeOf(String key, int from, Set<String> parts) {
        if (from == key.length()) {
            return true;
        }
        for (int to = key.length(); to > from; to--) {
            String part = key.substring(from, to);
            boolean known = part.equals(".") && from > 0 || isSeam(key, from) && parts.contains(part);
            if (known && madeOf(key, to, parts)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSeam(String key, int at) {
        return at == 0 || ".-".indexOf(key.charAt(at - 1)) >= 0 || ".-".indexOf(key.charAt(at)) >= 0;
    }
}

package thrumwright.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;

/**
 * A language in which every text is half as long again and full of accents, to find out where there is no room for it.
 * Its bundles stand beside the program's own and are read like those of any language.
 */
public final class LongTexts {
    /** English with accents: en-XA, as the language tag for such a test is by custom. */
    public static final Locale LOCALE = Locale.forLanguageTag("en-XA");

    private static final List<String> BUNDLES = List.of(
            "blocks",
            "editor/texts",
            "editor/commands",
            "plan/words",
            "plan/comparison",
            "plan/repairs",
            "sheet/steps");

    private static final String PLAIN = "aeiouyAEIOU";
    private static final String ACCENTED = "áéîöûýÁÉÎÖÛ";

    private LongTexts() {}

    /** Writes the bundles where the test classes are, so that {@link #LOCALE} finds them. */
    public static void write() {
        try {
            Path root = Path.of(LongTexts.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            for (String bundle : BUNDLES) {
                write(root.resolve("thrumwright/" + bundle + "_en_XA.properties"), bundle);
            }
            ResourceBundle.clearCache(LongTexts.class.getClassLoader());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (java.net.URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void write(Path file, String bundle) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = LongTexts.class.getResourceAsStream("/thrumwright/" + bundle + ".properties")) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        boolean commands = bundle.endsWith("commands");
        texts.replaceAll((key, text) -> isText(commands, (String) key) ? longer((String) text) : text);
        Files.createDirectories(file.getParent());
        try (OutputStream out = Files.newOutputStream(file)) {
            texts.store(out, null);
        }
    }

    private static boolean isText(boolean commands, String key) {
        return !commands || key.endsWith(".text") || key.endsWith(".tip");
    }

    /** Every word half as long again; what stands in braces as it is. */
    static String longer(String text) {
        StringBuilder all = new StringBuilder();
        StringBuilder word = new StringBuilder();
        int depth = 0;
        for (char c : text.toCharArray()) {
            depth += c == '{' ? 1 : 0;
            if (depth == 0 && Character.isLetter(c)) {
                word.append(c);
            } else {
                all.append(stretched(word.toString())).append(c);
                word.setLength(0);
            }
            depth -= c == '}' ? 1 : 0;
        }
        return all.append(stretched(word.toString())).toString();
    }

    private static String stretched(String word) {
        StringBuilder accented = new StringBuilder();
        for (char c : word.toCharArray()) {
            int at = PLAIN.indexOf(c);
            accented.append(at < 0 ? c : ACCENTED.charAt(at));
        }
        String again = accented.toString().toLowerCase(Locale.ROOT);
        return accented + again.substring(0, (again.length() + 1) / 2);
    }
}

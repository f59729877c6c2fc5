package thrumwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrase;
import thrumwright.measure.Phrases;

/** What a user reads stands in bundles and not in the source, and what the source asks of the bundle of refusals is there. */
class SentencesTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "thrumwright");
    private static final Pattern COMMENT =
            Pattern.compile("/\\*.*?\\*/|^\\s*//.*?$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern TWO_WORDS =
            Pattern.compile("[a-zA-Z][a-z'’]+[,:]? [a-z]{2}|\\p{L}{2}[.] \\p{Lu}|^ [a-z]{2,}[ :]");

    /** What stands before a literal that no user reads. */
    private static final Pattern UNSEEN = Pattern.compile(
            "(?:"
                    // a fault of the program, told to who mends it
                    + "(?:IllegalState|IllegalArgument|UnsupportedOperation|IndexOutOfBounds|IO)Exception\\([^;]*"
                    + "|(?:AssertionError|requireNonNull|unused)\\([^;]*"
                    // how a value is called in a file, which is the same in every language
                    + "|\\.with\\(|new BlockKind<>\\("
                    // the name of a thread
                    + "|Workers\\.one\\(|new Thread\\([^;]*|\\},"
                    // how a parser begins its own message
                    + "|original\\.(?:startsWith|substring)\\("
                    + ")$",
            Pattern.DOTALL);

    /** What is written for a machine: the layout of a window or of a menu, or HTML. */
    private static final Pattern MACHINE = Pattern.compile(
            "(?:font: |.*[|] |insets|wrap|span|split|skip|grow|push|gap|aligny?|wmin|\\[|[^<]*<[a-zA-Z!/]).*");

    /** Whole files, and rooms, with the reason. */
    private static final List<String> EXCEPTIONS = List.of(
            // the names that a new piece and its yarns get, the weaver's to change
            "piece/Beginnings.java",
            // how a measure can be typed
            "yarn/Thickness.java",
            "editor/form/YarnForm.java",
            // asked for by the system, shown nowhere
            "editor/look/HighContrastLaf.java",
            "output/page/Stopped.java",
            "output/pdf/PdfFonts.java");

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static String code(Path file) throws IOException {
        return COMMENT.matcher(Files.readString(file)).replaceAll("");
    }

    private static List<String> sentences(String code) {
        List<String> found = new ArrayList<>();
        Matcher literal = LITERAL.matcher(code);
        while (literal.find()) {
            String before = code.substring(Math.max(0, literal.start() - 300), literal.start())
                    .stripTrailing();
            boolean said = TWO_WORDS.matcher(literal.group(1)).find()
                    && !MACHINE.matcher(literal.group(1)).matches()
                    && !UNSEEN.matcher(before).find();
            if (said) {
                found.add(literal.group());
            }
        }
        return found;
    }

    @Test
    void noSentenceStandsInTheSource() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : sources()) {
            String name = SOURCES.relativize(file).toString().replace('\\', '/');
            if (EXCEPTIONS.stream().noneMatch(name::startsWith)) {
                sentences(code(file)).forEach(sentence -> found.add(name + ": " + sentence));
            }
        }

        assertThat(found).isEmpty();
    }

    @Test
    void aSentenceIsFound() {
        assertThat(sentences("throw new BadMeasure(\"A band is higher than 0.\");"))
                .hasSize(1);
        assertThat(sentences("label.setText(count + \" picks in all\");")).hasSize(1);
        assertThat(sentences("throw new IllegalStateException(\"no format for \" + block);"))
                .isEmpty();
        assertThat(sentences("panel.add(list, \"span 2, growx, wmin 60\");")).isEmpty();
    }

    @Test
    void everyExceptionIsThere() {
        assertThat(EXCEPTIONS)
                .allSatisfy(name -> assertThat(SOURCES.resolve(name)).exists());
    }

    /** Every phrase in the source has its sentence, and every place of that sentence its value. */
    @Test
    void whatIsRefusedCanBeSaid() throws IOException {
        Phrases bundle = Phrases.of(Phrase.TEXTS, Locale.ROOT);
        Pattern phrase =
                Pattern.compile("new (?:Phrase|BadMeasure|Refused|FileProblem)\\(\\s*\"([a-z.-]+)\"(?=[,)]([^;]*);)");
        Set<String> keys = new HashSet<>();
        for (Path file : sources()) {
            for (MatchResult each : phrase.matcher(code(file)).results().toList()) {
                keys.add(each.group(1));
                Set<String> values = new HashSet<>();
                LITERAL.matcher(each.group(2)).results().forEach(value -> values.add(value.group(1)));
                assertThat(values).as(each.group(1)).containsAll(Phrases.places(bundle.unfilled(each.group(1))));
            }
        }

        assertThat(keys).hasSizeGreaterThan(90);
    }

    @Test
    void aPhraseWithinAPhraseIsSaidInTheSameLanguage() {
        Phrase why = new Phrase("sett.not", Map.of("typed", "3"));
        Phrase whole = new Phrase("file.piece-not-kept", Map.of("why", why));

        assertThat(whole.in(Locale.ROOT))
                .isEqualTo("The piece can't be kept as it is. " + why)
                .contains("3/cm");
        assertThat(whole).hasToString(whole.in(Locale.CHINA));
    }
}

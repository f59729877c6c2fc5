package thrumwright.editor.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.block.Block;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.look.Theme;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.finding.Severity;

class TextsTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "thrumwright", "editor");
    private static final Pattern SAID = Pattern.compile("say\\(\\s*\"([a-z0-9.-]+)\"\\s*[,)]");
    private static final Pattern HEADED = Pattern.compile("heading\\(\\s*\"([a-z0-9.-]+)\"\\s*\\)");
    private static final Pattern FIELD = Pattern.compile(
            "\\.(?:text|lines|measure|whole|percent|length|lengthOrNone|choice|oneOf|oneOrNone|flag)\\(\\s*\"([a-z.-]+)\"");

    /** What is told at the loom is told on a page for a phone, too. */
    private static final Phrases AT_THE_LOOM = Phrases.of("thrumwright.sheet.loom", Locale.UK);

    private final Texts texts = Texts.of(Locale.UK);

    @Test
    void everythingThatTheSourceSaysIsInTheBundle() throws IOException {
        List<String> missing = new ArrayList<>();
        int met = 0;
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String source = Files.readString(file);
                met += missing(SAID, "", source, missing);
                met += missing(HEADED, "", source, missing);
                met += missing(FIELD, "field.", source, missing);
            }
        }
        assertThat(missing).isEmpty();
        assertThat(met).isGreaterThan(100);
    }

    private int missing(Pattern pattern, String prefix, String source, List<String> missing) {
        Matcher match = pattern.matcher(source);
        int met = 0;
        while (match.find()) {
            met++;
            String key = prefix + match.group(1);
            if (!texts.phrases().has(key) && !AT_THE_LOOM.has(key)) {
                missing.add(key);
            }
        }
        return met;
    }

    /** A tip is shown as it stands. */
    @Test
    void noTipHasPlacesToBeFilledIn() {
        List<String> tips = Stream.of("thrumwright.editor.texts", "thrumwright.blocks")
                .flatMap(bundle -> ResourceBundle.getBundle(bundle, Locale.ROOT).keySet().stream())
                .filter(key -> key.startsWith("field.") && key.endsWith(".tip"))
                .toList();

        assertThat(tips)
                .hasSizeGreaterThan(80)
                .allSatisfy(key -> assertThat(Phrases.places(texts.phrases().unfilled(key)))
                        .as(key)
                        .isEmpty());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyKindOfBlockCanBeAddedAndExplained(UnitSystem units) {
        CommandTexts commands = new CommandTexts(Locale.UK, "ctrl");
        for (Block block : NewBlocks.all(units)) {
            String key = block.key();
            assertThat(texts.say("about." + key)).endsWith(".");
            assertThat(commands.get("add-" + key).text())
                    .isEqualTo(texts.words().kind(block));
            assertThat(NewBlocks.ofKind(key, units).key()).isEqualTo(key);
        }
    }

    @Test
    void everyThemeAndSeverityHasAName() {
        for (Theme theme : Theme.values()) {
            assertThat(texts.name("theme", theme)).isNotBlank();
        }
        for (Severity severity : Severity.values()) {
            assertThat(texts.name("severity", severity)).isNotBlank();
        }
    }
}

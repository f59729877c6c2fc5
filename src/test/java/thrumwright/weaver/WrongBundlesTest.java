package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/**
 * One wrong word in the bundles, at least one for each kind of step: no sheet on which it stands is woven as planned. The
 * wrong bundle stands beside the program's own, as that of a language in which but one sentence is said otherwise.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WrongBundlesTest {
    private static final int PIECES = 30;
    /** On so many of the sheets on which a word stands it is tried; a long run tries all. */
    private static final int SHEETS = Seeds.of(100);

    private final List<Plan> plans = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();
    private final List<Path> written = new ArrayList<>();

    @BeforeAll
    void write() {
        for (int seed = 0; seed < PIECES; seed++) {
            plans.add(Plan.of(CodeWeaverTest.inOurWords(new RandomPieces(seed).next())));
        }
        for (Structure structure : Structures.builtIn().all()) {
            plans.add(Plan.of(CodeWeaverTest.inOurWords(structure.on(Pieces.panel(), Place.START))));
        }
        plans.forEach(plan -> sheets.add(CodeWeaverTest.text(plan)));
    }

    @AfterAll
    void takeAway() throws IOException {
        for (Path bundle : written) {
            Files.delete(bundle);
        }
        ResourceBundle.clearCache(WrongBundlesTest.class.getClassLoader());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "wrong-words.txt", delimiter = '|')
    void isFelt(String bundle, String key, String right, String wrong) throws IOException, URISyntaxException {
        Locale otherwise = otherwise(bundle, key, right, wrong);
        int said = 0;
        for (int i = 0; i < plans.size() && said < SHEETS; i++) {
            String changed = CodeWeaverTest.text(plans.get(i), otherwise);
            if (!changed.equals(sheets.get(i))) {
                said++;
                assertThat(CodeWeaverTest.differences(plans.get(i), changed))
                        .as("piece %d", i)
                        .isNotEmpty();
            }
        }
        assertThat(said).isPositive();
    }

    private Locale otherwise(String bundle, String key, String right, String wrong)
            throws IOException, URISyntaxException {
        String sentence = sentences(bundle).getProperty(key);
        assertThat(sentence).contains(right);
        Properties changed = new Properties();
        changed.setProperty(key, sentence.replace(right, wrong));
        Locale locale = new Locale("en", "XB", "W" + written.size());
        Path file = root().resolve("thrumwright/" + bundle + "_" + locale + ".properties");
        Files.createDirectories(file.getParent());
        try (Writer out = Files.newBufferedWriter(file)) {
            changed.store(out, null);
        }
        written.add(file);
        ResourceBundle.clearCache(WrongBundlesTest.class.getClassLoader());
        return locale;
    }

    private static Properties sentences(String bundle) throws IOException {
        Properties sentences = new Properties();
        try (var in = WrongBundlesTest.class.getResourceAsStream("/thrumwright/" + bundle + ".properties")) {
            sentences.load(new StringReader(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        }
        return sentences;
    }

    private static Path root() throws URISyntaxException {
        return Path.of(WrongBundlesTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
    }
}

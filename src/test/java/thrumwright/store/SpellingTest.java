package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrase;

/** A field whose name is misspelt isn't read silently as another piece. */
class SpellingTest {
    private static final Pattern NAME = Pattern.compile("\"(\\w{3,})\"(\\s*:)");

    @Test
    void everyLetterLeftOutIsRefusedOrTold() throws FileProblem {
        List<String> silent = new ArrayList<>();
        int told = 0;
        for (String file : BuiltIn.DEMO.names()) {
            String text = BuiltIn.DEMO.text(file);
            if (FileSort.of(text) != FileSort.PIECE) {
                continue;
            }
            assertThat(PieceFile.read(text).unknown().notices()).isEmpty();
            Matcher names = NAME.matcher(text);
            while (names.find()) {
                for (int i = names.start(1); i < names.end(1); i++) {
                    String wrong = text.substring(0, i) + text.substring(i + 1);
                    String was = names.group(1);
                    List<Phrase> notices = notices(wrong);
                    if (notices == null) {
                        continue;
                    }
                    told++;
                    if (notices.size() != 1 || !notices.get(0).toString().contains("“" + was + "” meant")) {
                        silent.add(file + " " + was + ": " + notices);
                    }
                }
            }
        }
        assertThat(told).isGreaterThan(100);
        assertThat(silent).isEmpty();
    }

    /** Null: refused. */
    private static List<Phrase> notices(String text) {
        try {
            return PieceFile.read(text).unknown().notices();
        } catch (FileProblem e) {
            return null;
        }
    }

    @Test
    void theNoticeHasItsPlaceAndTheFieldIsKept() throws FileProblem {
        String text = BuiltIn.DEMO.text("saltmarsh-panel.json").replaceFirst("\"note\"", "\"notte\"");
        PieceFile file = PieceFile.read(text);
        assertThat(file.unknown().notices())
                .singleElement()
                .asString()
                .startsWith("Line ")
                .contains("“notte” isn't known here", "Is “note” meant?");
        assertThat(file.text()).contains("\"notte\"");
    }

    @Test
    void whatIsMarkedAsSomebodysOwnIsLeftAlone() throws FileProblem {
        String text = BuiltIn.DEMO
                .text("saltmarsh-panel.json")
                .replaceFirst("\\{", "{\"x-room\": 4, \"my:season\": \"spring\", \"_seen\": true,");
        assertThat(PieceFile.read(text).unknown().notices()).isEmpty();
    }

    @Test
    void theNearestNameIsMeant() {
        assertThat(Spelling.likely("pics", Set.of("picks", "posts"))).contains("picks");
        assertThat(Spelling.likely("plna", Set.of("plan", "loom"))).contains("plan");
        assertThat(Spelling.likely("lpna", Set.of("plan", "loom"))).isEmpty();
        assertThat(Spelling.likely("comesout", Set.of("comesOut"))).contains("comesOut");
        assertThat(Spelling.likely("season", Set.of("note", "title"))).isEmpty();
    }

    /** In a class, in the piece that stands in it, and in the piece that it names; whoever saves that piece keeps the field. */
    @Test
    void aClassTellsOfItsPieceToo() throws FileProblem {
        String piece = BuiltIn.DEMO.text("saltmarsh-panel.json").replaceFirst("\"note\"", "\"notte\"");
        String wrong = "\"title\": \"Ours\", \"yarnz\": [], \"members\": [{\"nane\": \"Asta\"}]}";
        String named = "{\"thrumwrightClass\": 1, \"piece\": \"panel.json\", " + wrong;
        ClassFile file = ClassFile.read(named, name -> piece);
        assertThat(file.unknown().notices().stream().map(Phrase::toString))
                .hasSize(3)
                .anyMatch(notice -> notice.contains("Is “yarns” meant?"))
                .anyMatch(notice -> notice.contains("Is “name” meant?"))
                .anyMatch(notice -> notice.contains("panel.json") && notice.contains("Is “note” meant?"));
        assertThat(file.piece().text()).contains("\"notte\"");
        assertThat(file.text()).doesNotContain("notte");
        String inside = "{\"thrumwrightClass\": 1, \"piece\": " + piece + ", " + wrong;
        assertThat(ClassFile.read(inside, name -> "").unknown().notices()).hasSize(3);
    }
}

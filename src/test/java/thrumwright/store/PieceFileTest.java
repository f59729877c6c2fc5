package thrumwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import thrumwright.piece.Piece;
import thrumwright.testing.RandomPieces;

class PieceFileTest {
    @Test
    void whatIsWrittenReadsBackTheSame() throws FileProblem {
        RandomPieces pieces = new RandomPieces(1);
        for (int i = 0; i < 1000; i++) {
            Piece piece = pieces.next();
            String text = new PieceFile(piece, Unknown.none()).text();
            PieceFile read = PieceFile.read(text);
            assertThat(read.piece()).isEqualTo(piece);
            assertThat(read.unknown().isEmpty()).isTrue();
            assertThat(read.text()).isEqualTo(text);
        }
    }

    @Test
    void unknownFieldsSurviveWhereTheyStood() throws FileProblem {
        String text = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .replace("\"title\":", "\"mood\": {\"calm\": [1, 2.50, null]},\n  \"title\":")
                .replace("\"clearance\":", "\"feet\": 4, \"clearance\":")
                .replace("\"id\": \"soumak\",", "\"id\": \"soumak\", \"humming\": true,")
                .replace("\"id\": \"tide\",", "\"id\": \"tide\", \"shelf\": \"B\",");
        PieceFile file = PieceFile.read(text);
        Piece moved = file.piece().withStart(file.piece().start().without(Set.of("stiff")));
        String written = file.with(moved).text();
        assertThat(written)
                .contains("\"calm\": [")
                .contains("2.50")
                .contains("\"feet\": 4")
                .contains("\"shelf\": \"B\"");
        assertThat(written.indexOf("\"humming\": true"))
                .isGreaterThan(written.indexOf("\"id\": \"soumak\""))
                .isLessThan(written.indexOf("\"id\": \"fold\""));
        assertThat(PieceFile.read(written).text()).isEqualTo(written);
    }

    @Test
    void lengthsStayAsTheyWereTyped() throws FileProblem {
        String text = BuiltIn.DEMO
                .text(BuiltIn.DEMO.names().get(0))
                .replace("\"open\": \"70 cm\"", "\"open\": \"27 1/2 in\"");
        assertThat(PieceFile.read(text).text()).contains("\"open\": \"27 1/2 in\"");
    }

    /** A file cut off anywhere is refused with a place and a sentence, never with anything else. */
    @Test
    void everyTruncationIsRefusedInWords() {
        String whole = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)).stripTrailing();
        for (int length = 0; length < whole.length(); length++) {
            String cut = whole.substring(0, length);
            assertThatThrownBy(() -> PieceFile.read(cut))
                    .isInstanceOf(FileProblem.class)
                    .hasMessageMatching("(?s)Line \\d+, column \\d+.*[.]");
        }
    }

    /** Any damage is either harmless or refused in words. */
    @Test
    void damageIsHarmlessOrRefusedInWords() {
        String whole = BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(2));
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(9);
        int refused = 0;
        for (int i = 0; i < 4000; i++) {
            StringBuilder damaged = new StringBuilder(whole);
            for (int hits = random.nextInt(1, 4); hits > 0; hits--) {
                int at = random.nextInt(damaged.length());
                switch (random.nextInt(3)) {
                    case 0 -> damaged.deleteCharAt(at);
                    case 1 -> damaged.setCharAt(at, (char) random.nextInt(32, 127));
                    default -> damaged.insert(at, (char) random.nextInt(32, 127));
                }
            }
            try {
                PieceFile.read(damaged.toString()).text();
            } catch (FileProblem problem) {
                refused++;
                assertThat(problem.getMessage()).endsWith(".").doesNotContain("Exception");
            }
        }
        assertThat(refused).isGreaterThan(1000);
    }
}

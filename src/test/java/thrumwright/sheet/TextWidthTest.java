package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** Plain text fits a terminal of 80 columns, whatever names are like. */
class TextWidthTest {
    private static void assertFits(String text) {
        assertThat(text.lines())
                .allSatisfy(line -> assertThat(line.codePointCount(0, line.length()))
                        .as(line)
                        .isLessThanOrEqualTo(80));
    }

    private static String text(Piece piece) {
        return PlainText.of(StepSheet.of(Plan.of(piece), Locale.UK), Phrases.of("thrumwright.sheet.steps", Locale.UK));
    }

    @Test
    void demoSheetsFit() throws FileProblem {
        for (String name : BuiltIn.DEMO.names()) {
            assertFits(text(PieceFile.read(BuiltIn.DEMO.text(name)).piece()));
        }
    }

    @Test
    void sheetsOfAllSortsFit() {
        RandomPieces pieces = new RandomPieces(73);
        for (int i = 0; i < Seeds.of(1000, 20); i++) {
            Piece piece = pieces.next();
            assertFits(text(piece));
            assertFits(text(piece.withTitle("Reeds".repeat(40) + " at low water " + "and sedge ".repeat(12))));
        }
    }

    @Test
    void listsOfAClassFit() {
        RandomClasses classes = new RandomClasses(74);
        RandomPieces pieces = new RandomPieces(75);
        for (int i = 0; i < Seeds.of(100, 5); i++) {
            ClassPlan plan = ClassPlan.of(classes.next(4, pieces.next()));
            assertFits(ClassText.of(ClassSheet.of(plan, Locale.UK), Locale.UK));
        }
    }
}

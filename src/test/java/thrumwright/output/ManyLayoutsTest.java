package thrumwright.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.Yarn;

/** A thousand pieces laid out: long names, up to sixty blocks, fractions written in three ways, 4 cm to 2 m wide. */
class ManyLayoutsTest {
    private static final int EACH = Seeds.costly(250, 4);
    private static final List<String> NAMES = List.of(
            "1/2 hitch over 3/8 in cord",
            "½ hitch over ⅜ in cord",
            "1⁄2 hitch over 3⁄8 in cord",
            "The long panel for the west wall of the reading corner, after the sketches of low water and high water",
            "Queller-und-Strandflieder-Wandbehang-mit-eingewebtem-Gezeitenkalender",
            "Mud");

    private final Fonts fonts = Fonts.load();

    /** The seeds part the thousand, so that a failure is found again quickly. */
    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304})
    void everyPageReadsWell(long seed) {
        RandomPieces pieces = new RandomPieces(seed);
        RandomGenerator random = pieces.random();
        int first = (int) (seed % 4) * EACH;
        for (int i = first; i < first + EACH; i++) {
            Piece piece = piece(pieces, i);
            Paper paper = Paper.values()[i % Paper.values().length];
            PageSetup setup = new PageSetup(paper, i / 4 % 2 == 0, random.nextDouble(5, 30), random.nextDouble(0.4, 2));
            SheetPages pages = SheetLayout.of(Plan.of(piece), setup, fonts, Palette.onPaper(), Locale.UK);
            LayoutChecks.assertNothingOverlapsOrLeavesThePage(pages);
            LayoutChecks.assertInkLiesFree(pages);
        }
    }

    private static Piece piece(RandomPieces pieces, int i) {
        RandomGenerator random = pieces.random();
        // most ends have few blocks; every twentieth has sixty
        Piece piece = pieces.next(i % 20 == 0 ? 60 : random.nextInt(0, 12));
        String title = NAMES.get(i % NAMES.size());
        List<Yarn> yarns = piece.yarns().stream()
                .map(yarn -> yarn.withName(NAMES.get(random.nextInt(NAMES.size()))))
                .toList();
        Optional<Double> width = i % 7 == 0 ? Optional.of(40.0) : i % 7 == 1 ? Optional.of(2000.0) : Optional.empty();
        Piece named = piece.withTitle(title).withYarns(yarns);
        return width.map(mm -> named.withWarp(named.warp().withWidth(Length.parse(Math.round(mm) + " mm"))))
                .orElse(named);
    }
}

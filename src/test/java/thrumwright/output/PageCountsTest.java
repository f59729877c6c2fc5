package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PlacedPart;
import thrumwright.output.page.SheetPages;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** How many pages a sheet takes, and how full they are. */
class PageCountsTest {
    private static final Fonts FONTS = Fonts.load();
    private static final int EACH = Seeds.costly(250, 4);

    private static SheetLayout layout(Plan plan, PageSetup setup) {
        return new SheetLayout(plan, SheetLayout.Whose.NOBODYS, setup, FONTS, Palette.onPaper(), Locale.UK);
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    static Stream<String> structures() {
        return Structures.builtIn().all().stream().map(Structure::id);
    }

    private static void assertFew(Plan plan, Paper paper) {
        SheetLayout layout = layout(plan, PageSetup.usual(paper));
        assertThat(layout.section(SheetSection.CARDS).count()).as("cards").isLessThanOrEqualTo(2);
        assertThat(layout.section(SheetSection.CUTS).count()).as("cut page").isEqualTo(1);
        assertThat(layout.section(SheetSection.BOOKLET).count()).as("booklet").isBetween(1, 4);
        assertThat(layout.section(SheetSection.RECORD).count()).as("record").isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aDemoPieceTakesAtMostSevenPages(String name) throws Exception {
        Plan plan = Plan.of(PieceFile.read(BuiltIn.DEMO.text(name)).piece());
        assertFew(plan, Paper.A4);
        assertFew(plan, Paper.LETTER);
    }

    @ParameterizedTest
    @MethodSource("structures")
    void aPieceOfEachStructureTakesAtMostSevenPages(String id) {
        Piece piece = Structures.builtIn().byId(id).orElseThrow().on(Pieces.panel(), Place.START);
        assertFew(Plan.of(piece), Paper.A4);
        assertFew(Plan.of(piece), Paper.LETTER);
    }

    @Test
    void aClassOfEightTakesAtMostThirtyTwoPages() throws Exception {
        ClassPlan plan = ClassPlan.of(
                ClassFile.read(Path.of("demo", "class", "tuesday-class.json")).set());
        assertThat(plan.plans()).hasSize(8);
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            ClassPages pages = new ClassPages(
                    plan, PageSetup.usual(paper), SheetSection.USUAL, FONTS, Palette.onPaper(), Locale.UK);
            assertThat(IntStream.range(0, pages.count())
                            .map(sheet -> pages.sheet(sheet).count())
                            .sum())
                    .isLessThanOrEqualTo(32);
        }
    }

    /** Four pictures of twining with right and wrong below them are more than half a low page, and don't fit below the design's steps. */
    @Test
    void whatIsTooHighForTheRestOfALowPageGoesOnOverIt() {
        End twined = new End(List.of(Pieces.hemmed().block("twining").orElseThrow()));
        Piece piece = Pieces.panel().withStart(End.empty()).withTop(new Top.OnItsOwn(twined));
        for (double margin = 20; margin <= 40; margin += 2) {
            PageSetup low = new PageSetup(Paper.A4, true, margin, 1);
            SheetPages pages = layout(Plan.of(piece), low).section(SheetSection.BOOKLET);
            for (int page = 0; page < pages.count() - 1; page++) {
                assertThat(filled(pages, page))
                        .as("page %s of %s", page + 1, low)
                        .isGreaterThan(0.5);
            }
        }
    }

    /** The content of every page but the last of a section reaches over more than half of it. */
    @ParameterizedTest
    @ValueSource(longs = {601, 602, 603, 604})
    void everyPageButASectionsLastIsMoreThanHalfFull(long seed) {
        RandomPieces pieces = new RandomPieces(seed);
        RandomGenerator random = pieces.random();
        List<String> empty = new ArrayList<>();
        int first = (int) (seed % 4) * EACH;
        for (int i = first; i < first + EACH; i++) {
            Piece piece = i % 20 == 0 ? pieces.next(60) : pieces.next();
            Paper paper = Paper.values()[i % Paper.values().length];
            PageSetup setup = new PageSetup(paper, i / 4 % 2 == 0, random.nextDouble(5, 30), random.nextDouble(0.4, 2));
            SheetLayout layout = layout(Plan.of(piece), setup);
            for (SheetSection section : List.of(SheetSection.CUTS, SheetSection.BOOKLET, SheetSection.RECORD)) {
                SheetPages pages = layout.section(section);
                for (int page = 0; page < pages.count() - 1; page++) {
                    double filled = filled(pages, page);
                    if (filled <= 0.5) {
                        empty.add(section + " page " + (page + 1) + " of " + pages.count() + ": " + filled
                                + " of piece " + i + " on " + setup);
                    }
                }
            }
        }
        assertThat(empty).isEmpty();
    }

    /** Down to where a page's last part ends, as a share of what there is between margins and foot. */
    private static double filled(SheetPages pages, int page) {
        double margin = pages.setup().marginPoints();
        List<PlacedPart> parts = pages.parts(page);
        PlacedPart last = parts.get(parts.size() - 1);
        return (last.y() + last.height() - margin) / (pages.setup().height() - 2 * margin - Densities.FOOTER);
    }
}

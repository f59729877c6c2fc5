package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Block;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.card.CardPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.card.Card;
import thrumwright.sheet.card.CardLine;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardSaying;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.Yarn;

/** Cards as pages: whole blocks, nothing on top of anything else, and large enough for the distance. */
class CardPagesTest {
    private static final Fonts FONTS = Fonts.load();
    private static final List<String> NAMES = List.of(
            "1/2 hitch over 3/8 in cord",
            "The long panel for the west wall of the reading corner, after the sketches of low water and high water",
            "Queller-und-Strandflieder-Wandbehang-mit-eingewebtem-Gezeitenkalender",
            "Mud");

    /** Dots per point of a rendered page. */
    private static final double DOTS = 4;
    /** What the edge of a letter may lose to the dots, mm. */
    private static final double EDGE = 25.4 / 72 / DOTS;

    private static SheetPages pages(Plan plan, PageSetup setup) {
        return CardPages.of(plan, StepSheet.of(plan, Locale.UK), setup, FONTS, Palette.onPaper(), Locale.UK);
    }

    private static Piece demo(String name) throws IOException, FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(name.endsWith(".json") ? name : name + ".json"))
                .piece();
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoPiecesHaveOneCardAnEnd(String name) throws Exception {
        for (Paper paper : Paper.values()) {
            assertThat(pages(Plan.of(demo(name)), PageSetup.usual(paper)).count())
                    .as(name + " on " + paper)
                    .isEqualTo(2);
        }
    }

    static Stream<String> structures() {
        return Structures.builtIn().all().stream().map(Structure::id);
    }

    @ParameterizedTest
    @MethodSource("structures")
    void everyStructureHasOneCardAnEnd(String id) throws Exception {
        Structure structure = Structures.builtIn().byId(id).orElseThrow();
        Plan plan = Plan.of(structure.on(demo("saltmarsh-panel"), Place.START));
        SheetPages pages = pages(plan, PageSetup.usual(Paper.A4));
        assertThat(pages.count()).isLessThanOrEqualTo(2);
        assertHolds(plan, pages);
    }

    /** Seven blocks and fourteen find room on one page that hangs a metre away; on Letter, which is lower, twelve. */
    @ParameterizedTest
    @CsvSource({"A4, 7", "A4, 14", "LETTER, 7", "LETTER, 12"})
    void manyBlocksFitOnePageAtAMetre(Paper paper, int blocks) throws Exception {
        Piece panel = demo("saltmarsh-panel");
        Plan plan = Plan.of(panel.withStart(repeated(panel.start(), blocks)));
        SheetPages pages = pages(plan, PageSetup.usual(paper));
        assertThat(pages.words(0)).contains("Step 1: ", "Step " + blocks + ": ");
        assertHolds(plan, pages);
    }

    private static End repeated(End end, int count) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = i < end.blocks().size()
                    ? i
                    : 2 + (i - end.blocks().size()) % (end.blocks().size() - 2);
            Block block = end.blocks().get(from);
            blocks.add(block.withTag(block.tag().withId("b" + i)));
        }
        return new End(blocks);
    }

    /** In a class, where many are printed: of a loom with few blocks both ends on one page, the start first. */
    @Test
    void aClassesSmallEndsShareAPage() throws Exception {
        Piece panel = demo("saltmarsh-panel");
        Piece small = panel.withStart(new End(panel.start().blocks().subList(1, 3)));
        Plan plan = Plan.of(small);
        PageSetup setup = PageSetup.usual(Paper.A4);
        SheetPages own =
                CardPages.of(plan, StepSheet.of(plan, "Asta", Locale.UK), setup, FONTS, Palette.onPaper(), Locale.UK);
        assertThat(own.count()).isEqualTo(1);
        assertThat(own.parts(0).get(0).y()).isLessThan(own.parts(0).get(1).y());
        assertHolds(plan, own);
        assertThat(pages(plan, setup).count()).isEqualTo(2);
        Plan large = Plan.of(panel);
        SheetPages whole =
                CardPages.of(large, StepSheet.of(large, "Asta", Locale.UK), setup, FONTS, Palette.onPaper(), Locale.UK);
        assertThat(whole.count()).isEqualTo(2);
    }

    /** Sixty blocks go on from card to card, never in the middle of one, and each card says so. */
    @Test
    void manyBlocksGoOnFromCardToCard() throws Exception {
        Piece panel = demo("saltmarsh-panel");
        Plan plan = Plan.of(panel.withStart(repeated(panel.start(), 60)));
        SheetPages pages = pages(plan, PageSetup.usual(Paper.A4));
        assertHolds(plan, pages);
        assertThat(pages.words(0)).contains("Card 1 of 4").contains("on card 2.");
        assertThat(pages.words(1))
                .contains("Card 2 of 4")
                .contains("on card 1.")
                .contains("on card 3.");
    }

    /** The seeds part the thousand, so that a failure is found again quickly. */
    @ParameterizedTest
    @ValueSource(longs = {701, 702, 703, 704})
    void everyCardReadsWell(long seed) {
        RandomPieces pieces = new RandomPieces(seed);
        RandomGenerator random = pieces.random();
        int each = Seeds.costly(250, 4);
        int first = (int) (seed % 4) * each;
        for (int i = first; i < first + each; i++) {
            Plan plan = Plan.of(named(pieces.next(i % 20 == 0 ? 60 : random.nextInt(0, 16)), random));
            Paper paper = Paper.values()[i % Paper.values().length];
            double distance = i % 10 == 0 ? 2 : random.nextDouble(0.4, 2);
            PageSetup setup = new PageSetup(paper, i / 4 % 2 == 0, random.nextDouble(5, 30), distance);
            assertHolds(plan, pages(plan, setup));
        }
    }

    private static Piece named(Piece piece, RandomGenerator random) {
        List<Yarn> yarns = piece.yarns().stream()
                .map(yarn -> yarn.withName(NAMES.get(random.nextInt(NAMES.size()))))
                .toList();
        return piece.withTitle(NAMES.get(random.nextInt(NAMES.size()))).withYarns(yarns);
    }

    /** Whatever the piece and the page. */
    private static void assertHolds(Plan plan, SheetPages pages) {
        LayoutChecks.assertNothingOverlapsOrLeavesThePage(pages);
        LayoutChecks.assertInkLiesFree(pages);
        assertEachStepIsOnOneCard(plan, pages);
    }

    /** In the order of working, from the first block to the last, the lines about the design between the ends. */
    private static void assertEachStepIsOnOneCard(Plan plan, SheetPages pages) {
        List<String> wanted = new ArrayList<>();
        for (Place place : Place.values()) {
            if (place == Place.START || Card.needed(plan, place)) {
                Card card = Card.of(plan, place, Locale.UK);
                wanted.add(card.begin().parts().get(0).says());
                card.rows().forEach(row -> wanted.add("Step " + row.number() + ": " + row.name()));
                card.after().stream()
                        .flatMap(line -> line.parts().stream().limit(1))
                        .forEach(part -> wanted.add(part.says()));
            }
        }
        Set<String> known = new TreeSet<>(wanted);
        List<String> heard = new ArrayList<>();
        for (int page = 0; page < pages.count(); page++) {
            pages.words(page).lines().filter(known::contains).forEach(heard::add);
        }
        assertThat(heard).containsExactlyElementsOf(wanted);
    }

    /** What must be read from the loom stands under 20 minutes of arc at least, by the ink on the rendered page. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.7, 1, 1.5, 2})
    void capitalsAreAsHighAsTheDistanceAsks(double distance) throws Exception {
        // NUREG-0700 rev. 2, 1.3.1-4: H = distance × minutes × 6.283/21600
        double least = distance * 1000 * 20 * 6.283 / 21600;
        Plan plan = Plan.of(demo("saltmarsh-panel"));
        Set<String> large = large(plan);
        for (Paper paper : List.of(Paper.A4, Paper.A3)) {
            SheetPages pages = pages(plan, new PageSetup(paper, false, 14, distance));
            Set<String> measured = new TreeSet<>();
            for (int page = 0; page < pages.count(); page++) {
                for (InkBoxes.Ink ink : inks(pages, page)) {
                    if (large.contains(ink.what())) {
                        measured.add(ink.what());
                        assertThat(firstSign(pages, page, ink.box()))
                                .as(ink.what() + " at " + distance + " m on " + paper)
                                .isGreaterThanOrEqualTo(least - EDGE);
                    }
                }
            }
            assertThat(measured).containsAll(large);
        }
    }

    /** All large words that begin with a capital or a figure. */
    private static Set<String> large(Plan plan) {
        Set<String> large = new TreeSet<>();
        for (Place place : Place.values()) {
            Card card = Card.of(plan, place, Locale.UK);
            for (CardRow row : card.rows()) {
                large.add(Integer.toString(row.number()));
                large.add(row.name());
                row.count().map(CardSaying::shown).ifPresent(large::add);
            }
            Stream.concat(Stream.of(card.begin()), card.after().stream()).forEach(line -> first(line, large));
        }
        return large;
    }

    private static void first(CardLine line, Set<String> into) {
        line.parts().stream().limit(1).forEach(part -> into.add(part.shown()));
        line.number().ifPresent(number -> into.add(Integer.toString(number)));
    }

    private static List<InkBoxes.Ink> inks(SheetPages pages, int page) {
        InkBoxes ink = new InkBoxes();
        pages.parts(page).forEach(part -> part.part().paint(ink, part.x(), part.y(), part.width()));
        return ink.inks().stream()
                .filter(one -> one.kind() == InkBoxes.Kind.TEXT)
                .toList();
    }

    /** Height of the first letter or figure of a text as it is printed, mm: up to the first column without any ink. */
    private static double firstSign(SheetPages pages, int page, Rectangle2D box) {
        Rectangle part = new Rectangle(
                (int) Math.floor(box.getX() * DOTS) - 1,
                (int) Math.floor(box.getY() * DOTS) - 2,
                (int) Math.ceil(box.getWidth() * DOTS) + 2,
                (int) Math.ceil(box.getHeight() * DOTS) + 4);
        BufferedImage image = PngFile.picture(pages, page, DOTS, part);
        int ground = image.getRGB(0, image.getHeight() / 2);
        int left = 0;
        while (!inked(image, left, ground)) {
            left++;
        }
        int top = image.getHeight();
        int bottom = 0;
        for (int x = left; x < image.getWidth() && inked(image, x, ground); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if (isInk(image.getRGB(x, y), ground)) {
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y + 1);
                }
            }
        }
        return (bottom - top) * EDGE;
    }

    private static boolean inked(BufferedImage image, int x, int ground) {
        for (int y = 0; y < image.getHeight(); y++) {
            if (isInk(image.getRGB(x, y), ground)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isInk(int dot, int ground) {
        return Math.abs(Palette.lightness(new Color(dot)) - Palette.lightness(new Color(ground))) > 0.4;
    }
}

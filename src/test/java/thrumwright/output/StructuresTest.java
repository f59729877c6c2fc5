package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.SearchWords;
import thrumwright.piece.Structure;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.finding.StructureFit;
import thrumwright.plan.words.FindingWords;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.StructureFile;
import thrumwright.store.Structures;
import thrumwright.testing.Golden;
import thrumwright.testing.Seeds;

/**
 * Every structure of the library is planned, drawn and printed for six very different pieces: from 4 cm to 2 m wide, 2 to 14
 * ends per cm, in centimetres and inches, on frames with and without posts.
 */
class StructuresTest {
    private static final SearchWords SEARCH = SearchWords.of(Phrases.of("thrumwright.piece.search", Locale.ROOT));

    private static final Path RESOURCES = Path.of("src", "test", "resources", "thrumwright", "structures");
    private static final int CELL_WIDTH = 84;
    private static final int CELL_HEIGHT = 60;

    private final Fonts fonts = Fonts.load();

    static Stream<String> structures() {
        return Structures.builtIn().all().stream().map(Structure::id);
    }

    private static Structure structure(String id) {
        return Structures.builtIn().byId(id).orElseThrow();
    }

    private static List<Piece> pieces() throws IOException, FileProblem {
        List<Piece> pieces = new ArrayList<>();
        try (Stream<Path> files = Files.list(RESOURCES.resolve("pieces"))) {
            for (Path file : files.sorted().toList()) {
                pieces.add(PieceFile.read(Files.readString(file)).piece());
            }
        }
        assertThat(pieces).hasSize(6);
        return pieces;
    }

    /**
     * The rule, worked out apart from the findings: a structure fits where each row of plain weave, twining or soumak has
     * room between the ends (D < s), where both ends have the free warp that their finish needs, and where a first turn takes
     * at most half of the hem.
     */
    private static boolean fits(Plan plan) {
        return Stream.of(plan.start(), plan.top()).allMatch(end -> room(end) && freeWarp(end) && turn(end));
    }

    private static boolean room(EndPlan end) {
        return end.blocks().stream()
                .flatMap(block -> block.work().stream())
                .allMatch(work -> work.setting().warp() + work.setting().beaten()
                        < work.setting().spacing());
    }

    private static boolean freeWarp(EndPlan end) {
        return end.finish().map(finish -> finish.free() >= finish.needed()).orElse(true);
    }

    private static boolean turn(EndPlan end) {
        return end.hem()
                .flatMap(hem -> hem.firstTurn().map(turn -> turn <= hem.cloth() / 2))
                .orElse(true);
    }

    @ParameterizedTest
    @MethodSource("structures")
    void isPlannedWithoutAProblemWhereItFits(String id) throws IOException, FileProblem {
        int fitting = 0;
        for (Piece piece : pieces()) {
            StructureFit start = StructureFit.of(structure(id), piece, Place.START);
            if (fits(start.plan())) {
                fitting++;
                assertThat(Findings.of(start.plan()).all())
                        .as(id + " on " + piece.title())
                        .filteredOn(finding -> finding.severity() == Severity.PROBLEM)
                        .extracting(FindingWords.of(start.plan().piece(), Locale.UK)::say)
                        .isEmpty();
            }
            assertThat(start.warp()).isPositive();
            assertThat(start.hemDepth().isPresent())
                    .isEqualTo(start.end().hem().filter(Hem::folds).isPresent());
            StructureFit top = StructureFit.of(structure(id), piece, Place.TOP);
            assertThat(top.hemDepth().isPresent()).isEqualTo(start.hemDepth().isPresent());
        }
        assertThat(fitting).as(id + " fits").isGreaterThanOrEqualTo(5);
    }

    @ParameterizedTest
    @MethodSource("structures")
    void everyStepIsDrawnAsItWas(String id) throws IOException, FileProblem {
        List<Plan> plans = new ArrayList<>();
        for (Piece piece : pieces()) {
            plans.add(Plan.of(structure(id).on(piece, Place.START)));
        }
        BufferedImage sheet = contactSheet(plans);
        Golden.looksAsItDid(sheet, RESOURCES.resolve("golden").resolve(id + ".png"));
    }

    /** A column for each piece, a row for each block. */
    private BufferedImage contactSheet(List<Plan> plans) {
        int rows = plans.get(0).start().blocks().size();
        BufferedImage sheet =
                new BufferedImage(plans.size() * CELL_WIDTH, rows * CELL_HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = sheet.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Font font = fonts.regular().deriveFont(7f);
        for (int column = 0; column < plans.size(); column++) {
            EndPlan start = plans.get(column).start();
            for (int row = 0; row < rows; row++) {
                BlockPlan block = start.blocks().get(row);
                Rectangle box =
                        new Rectangle(column * CELL_WIDTH + 2, row * CELL_HEIGHT + 2, CELL_WIDTH - 4, CELL_HEIGHT - 4);
                new StepPainter(g, Palette.onPaper(), font).paint(box, plans.get(column), start, block);
                assertThat(inked(sheet, box)).as("ink of " + block.block().id()).isGreaterThan(40);
            }
        }
        g.dispose();
        return sheet;
    }

    private static int inked(BufferedImage sheet, Rectangle box) {
        int inked = 0;
        for (int y = box.y; y < box.y + box.height; y++) {
            for (int x = box.x; x < box.x + box.width; x++) {
                inked += (sheet.getRGB(x, y) & 0xff) < 235 ? 1 : 0;
            }
        }
        return inked;
    }

    @ParameterizedTest
    @MethodSource("structures")
    void isPrintedForEveryPiece(String id) throws IOException, FileProblem {
        int first = structures().toList().indexOf(id);
        List<Piece> pieces = pieces();
        // in turn, so that each piece is printed in a short run too
        for (int i = 0; i < Seeds.of(pieces.size()); i++) {
            Plan plan = Plan.of(structure(id).on(pieces.get((first + i) % pieces.size()), Place.START));
            Paper paper = (first + i) % 2 == 0 ? Paper.A4 : Paper.LETTER;
            SheetPages pages = SheetLayout.of(plan, PageSetup.usual(paper), fonts, Palette.onPaper(), Locale.UK);
            assertThat(pages.count()).isBetween(4, 40);
            assertThat(stepTitles(plan))
                    .hasSizeGreaterThan(plan.start().blocks().size());
            // each structure as a whole PDF for one of the pieces
            if (i == 0) {
                assertThat(pdf(pages)).startsWith("%PDF-");
            }
        }
    }

    private String pdf(SheetPages pages) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            PdfFile.write(pages, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toString(java.nio.charset.StandardCharsets.ISO_8859_1).substring(0, 8);
    }

    private static List<String> stepTitles(Plan plan) {
        return StepSheet.of(plan, Locale.UK).chapters().stream()
                .flatMap(chapter -> chapter.steps().stream())
                .map(Step::title)
                .toList();
    }

    /** Written by hand from docs/files.md alone: a fringe, a hem with a sleeve, and a lattice, with words and places. */
    @ParameterizedTest
    @ValueSource(strings = {"by-hand", "by-hand-sleeve", "by-hand-lattice"})
    void aStructureWrittenByHandLoadsPlansDrawsAndPrints(String name) throws IOException, FileProblem {
        StructureFile file = StructureFile.read(Files.readString(RESOURCES.resolve(name + ".json")));
        assertThat(StructureFile.read(file.checkedText()).structure()).isEqualTo(file.structure());
        List<Plan> plans = new ArrayList<>();
        int fitting = 0;
        for (Piece piece : pieces()) {
            Plan plan = Plan.of(file.structure().on(piece, Place.START));
            if (fits(plan)) {
                fitting++;
                assertThat(Findings.of(plan).has(Severity.PROBLEM))
                        .as(piece.title() + Findings.of(plan))
                        .isFalse();
            }
            plans.add(plan);
        }
        for (Plan plan : plans.subList(0, Seeds.of(plans.size(), 3))) {
            SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
            assertThat(pdf(pages)).startsWith("%PDF-");
        }
        assertThat(fitting).isGreaterThanOrEqualTo(4);
        Golden.looksAsItDid(contactSheet(plans), RESOURCES.resolve("golden").resolve(name + ".png"));
    }

    private static List<String> sentences(String name, int piece, String step) throws IOException, FileProblem {
        StructureFile file = StructureFile.read(Files.readString(RESOURCES.resolve(name + ".json")));
        Plan plan = Plan.of(file.structure().on(pieces().get(piece), Place.START));
        return StepSheet.of(plan, Locale.UK).chapters().stream()
                .flatMap(chapter -> chapter.steps().stream())
                .filter(each -> each.title().equals(step))
                .findFirst()
                .orElseThrow()
                .sentences();
    }

    @Test
    void itsOwnWordsStandOnTheSheet() throws IOException, FileProblem {
        assertThat(sentences("by-hand", 0, "Waste band"))
                .containsExactly(
                        "Weave 8 picks of Scrap. Start at the left, over the left edge end.",
                        "It comes out again, so any scrap will do.");
        assertThat(sentences("by-hand-sleeve", 0, "Hem fold"))
                .hasSize(1)
                .allMatch(words -> words.endsWith(" deep, 2 layers."));
        assertThat(sentences("by-hand-lattice", 0, "Rows of knots at the top"))
                .hasSize(2)
                .anyMatch(words -> words.startsWith("Take out: waste band."))
                .anyMatch(words -> words.endsWith(" free, 8 cm hanging. 3 rows."));
    }

    /** What is unknown in it survives, and it is found by what it says of itself. */
    @Test
    void whatIsUnknownInItSurvives() throws IOException, FileProblem {
        StructureFile file = StructureFile.read(Files.readString(RESOURCES.resolve("by-hand.json")));
        assertThat(file.text()).contains("\"made by\": \"the Tuesday class\"");
        assertThat(file.structure().answers("quick fringe", SEARCH)).isTrue();
    }
}

package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Shown;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Butterflies;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/**
 * What another reader finds in the PDF, against the plan itself: the sheet's own steps aren't asked. Lines may break
 * anywhere.
 */
class PdfReadBackTest {
    private static final Fonts FONTS = Fonts.load();
    private static final Pattern COUNT = Pattern.compile("(?<!\\d)\\d+[\\s\\u00a0]?×");

    /** Letters of one size that follow each other in the file. */
    private record Run(String text, double points, double capital) {
        /** Height of its capitals on paper, mm. */
        double high() {
            return points * capital * 25.4 / 72;
        }
    }

    /** Collects runs in the order of the file. */
    private static final class Reader extends PDFTextStripper {
        private final List<Run> runs = new ArrayList<>();

        @Override
        protected void writeString(String text, List<TextPosition> letters) throws IOException {
            TextPosition first = letters.get(0);
            double capital = first.getFont().getFontDescriptor().getCapHeight() / 1000;
            runs.add(new Run(text, first.getYScale(), capital));
            super.writeString(text, letters);
        }
    }

    private static Reader read(Plan plan, SheetSection section, PageSetup setup) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetLayout layout =
                new SheetLayout(plan, SheetLayout.Whose.NOBODYS, setup, FONTS, Palette.onPaper(), Locale.UK);
        PdfFile.write(layout.section(section), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            Reader reader = new Reader();
            reader.getText(document);
            return reader;
        }
    }

    /** A text wherever its lines break. */
    private static Pattern spread(String text) {
        return Pattern.compile("(?<!\\d)"
                + text.replaceAll("\\s+", "")
                        .codePoints()
                        .mapToObj(letter -> Pattern.quote(Character.toString(letter)))
                        .collect(Collectors.joining("[\\s\\u00a0\\u202f]*")));
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoSheetsSayWhatThePlanSays(String name) throws Exception {
        assertSaysThePlan(Plan.of(PieceFile.read(BuiltIn.DEMO.text(name)).piece()), Paper.A4);
    }

    @Test
    void sheetsOfAllSortsSayWhatThePlanSays() throws IOException {
        RandomPieces pieces = new RandomPieces(61);
        for (int i = 0; i < Seeds.of(40); i++) {
            assertSaysThePlan(Plan.of(pieces.next()), Paper.values()[i % Paper.values().length]);
        }
    }

    private static void assertSaysThePlan(Plan plan, Paper paper) throws IOException {
        List<String> cuts = new ArrayList<>(List.of(plan.piece().title()));
        cuts.addAll(cuts(plan));
        assertReads(cuts.stream().map(Wanted::of).toList(), text(plan, SheetSection.CUTS, paper), plan);
        List<Wanted> work = new ArrayList<>(work(plan.start(), plan));
        work.addAll(work(plan.top(), plan));
        assertReads(work, text(plan, SheetSection.CARDS, paper), plan);
        assertThat(large(plan, paper))
                .as("counts on the cards")
                .isEqualTo(work.stream().mapToLong(Wanted::counts).sum());
    }

    /** How many runs to be read from the loom are counts of picks or rows. */
    private static long large(Plan plan, Paper paper) throws IOException {
        double minute = 1000 * 6.283 / 21600;
        return read(plan, SheetSection.CARDS, PageSetup.usual(paper)).runs.stream()
                .filter(run ->
                        run.high() >= 16 * minute && COUNT.matcher(run.text()).find())
                .count();
    }

    private static String text(Plan plan, SheetSection section, Paper paper) throws IOException {
        return read(plan, section, PageSetup.usual(paper)).runs.stream()
                .map(Run::text)
                .collect(Collectors.joining("\n"));
    }

    /** What is to be read next, in one of these orders: a card may tell a height before the row or after it, as there is room. */
    private record Wanted(List<List<String>> orders) {
        static Wanted of(String text) {
            return new Wanted(List.of(List.of(text)));
        }

        static Wanted with(String height, List<String> row) {
            List<String> before = Stream.concat(Stream.of(height), row.stream()).toList();
            List<String> after = Stream.concat(row.stream(), Stream.of(height)).toList();
            return new Wanted(List.of(before, after));
        }

        /** Where the order ends that is met first; empty if none is. */
        OptionalInt end(String all, int from) {
            return orders.stream()
                    .map(order -> end(order, all, from))
                    .flatMapToInt(OptionalInt::stream)
                    .min();
        }

        private static OptionalInt end(List<String> order, String all, int from) {
            int at = from;
            for (String text : order) {
                Matcher found = spread(text).matcher(all);
                if (!found.find(at)) {
                    return OptionalInt.empty();
                }
                at = found.end();
            }
            return OptionalInt.of(at);
        }

        long counts() {
            return orders.get(0).stream()
                    .filter(text -> COUNT.matcher(text).matches())
                    .count();
        }
    }

    private static void assertReads(List<Wanted> expected, String all, Plan plan) {
        int at = 0;
        for (Wanted wanted : expected) {
            OptionalInt end = wanted.end(all, at);
            assertThat(end)
                    .as(
                            "“%s” in its place on the sheet of %s, after %d letters of:%n%s",
                            wanted.orders(), plan.piece().title(), at, all)
                    .isPresent();
            at = end.getAsInt();
        }
    }

    /** Every cut, in the order of use; equal lengths of one yarn for one part are one line, and long ones are in metres. */
    private static List<String> cuts(Plan plan) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            for (BlockPlan block : end.blocks()) {
                block.work()
                        .ifPresent(work -> work.toCut().ifPresent(cut -> {
                            Butterflies butterflies = cut.butterflies();
                            double each = butterflies.count() == 1 ? cut.length() : butterflies.each();
                            counts.merge(
                                    work.yarn().id() + "|"
                                            + plan.piece().shown().cut(each),
                                    butterflies.count(),
                                    Integer::sum);
                        }));
            }
        }
        // tassels are wrapped off the loom, after all that is woven, those of the top first: it is cut off first
        for (EndPlan end : List.of(plan.top(), plan.start())) {
            end.finish()
                    .flatMap(Finish::wrapping)
                    .ifPresent(wrapping -> counts.merge(
                            wrapping.yarn().id() + "|"
                                    + plan.piece().shown().cut(wrapping.each().length()),
                            wrapping.count(),
                            Integer::sum));
        }
        plan.sewnCord()
                .ifPresent(cord -> counts.merge(
                        cord.yarn().id() + "|" + plan.piece().shown().cut(cord.strand()),
                        cord.count() * cord.strands(),
                        Integer::sum));
        return counts.entrySet().stream()
                .map(cut -> cut.getValue() + " ×" + cut.getKey().split("\\|", 2)[1])
                .toList();
    }

    /**
     * Every block that is worked on the loom, with the height that it reaches from what its end is measured from, its first row and
     * how many there are.
     */
    private static List<Wanted> work(EndPlan end, Plan plan) {
        Words words = new Words(Locale.UK);
        Shown shown = plan.piece().shown();
        List<Wanted> said = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            if (!(block.block() instanceof EdgeFinish)) {
                said.add(Wanted.of(words.name(block.block())));
                List<String> rows = block.work().map(PdfReadBackTest::rows).orElse(List.of());
                said.add(
                        block.height() > 0
                                ? Wanted.with("↑ " + shown.figures(plan.above(end.place(), end.reach(block))), rows)
                                : new Wanted(List.of(rows)));
            }
        }
        return said;
    }

    private static List<String> rows(Work work) {
        Row first = work.rows().get(0);
        return List.of(
                (first.from() == Side.LEFT ? "→" : "←") + word(first, work),
                work.rows().size() + " ×");
    }

    /** A pick is told by the outermost end at the side where it begins: with an even warp the right one goes the other way. */
    private static String word(Row row, Work work) {
        if (row.shed().isPresent()) {
            boolean overLeft = row.shed().get() == Shed.OVER_FIRST;
            boolean right = row.from() == Side.RIGHT;
            boolean over = overLeft != (right && work.setting().ends() % 2 == 0);
            return over ? "over" : "under";
        }
        String without = work.block() instanceof Hemstitching ? "bind" : "hitch";
        return row.lean().map(lean -> lean == Lean.Z ? "/" : "\\").orElse(without);
    }

    /**
     * Capital height H = distance × minutes × 6.283/21600 (NUREG-0700 rev. 2, 1.3.1-4): rows and heights to reach at 20
     * minutes of arc, names of steps never under 16.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.7, 1, 1.5, 2})
    void whatIsReadFromTheLoomIsLargeEnough(double metres) throws IOException {
        PageSetup setup = new PageSetup(Paper.A4, false, PageSetup.USUAL_MARGIN, metres);
        Plan plan = Plan.of(Pieces.panel());
        Reader reader = read(plan, SheetSection.CARDS, setup);
        double minute = metres * 1000 * 6.283 / 21600;
        List<Run> heights = reader.runs.stream()
                .filter(run -> run.text().matches("↑ \\d.*"))
                .toList();
        assertThat(heights).hasSizeGreaterThanOrEqualTo(12);
        // the file counts in hundredths of a point
        assertThat(heights).allMatch(run -> run.high() >= 20 * minute - 0.01);
        List<Run> names = reader.runs.stream()
                .filter(run -> run.text().strip().matches("Twining|Soumak|Facing|Waste band|Stiff band"))
                .toList();
        assertThat(names).hasSizeGreaterThanOrEqualTo(8);
        assertThat(names).allMatch(run -> run.high() >= 16 * minute - 0.01);
    }
}

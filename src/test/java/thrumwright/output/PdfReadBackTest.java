package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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
    /** So many rows of a block are told one by one; of more the first two. */
    private static final int TOLD = 16;

    private static final Pattern ROW = Pattern.compile("(?<!\\d)\\d+\\s?[→←]\\s?(over|under|hitch|bind|[/\\\\])");

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

    private static Reader read(Plan plan, PageSetup setup) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(SheetLayout.of(plan, setup, FONTS, Palette.onPaper(), Locale.UK), FONTS, out);
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
                        .collect(Collectors.joining("\\s*")));
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
        Reader reader = read(plan, PageSetup.usual(paper));
        String all = reader.runs.stream().map(Run::text).collect(Collectors.joining("\n"));
        List<String> expected = new ArrayList<>();
        expected.add(plan.piece().title());
        expected.addAll(cuts(plan));
        expected.addAll(work(plan.start(), plan));
        expected.addAll(work(plan.top(), plan));
        int at = 0;
        for (String wanted : expected) {
            Matcher found = spread(wanted).matcher(all);
            assertThat(found.find(at))
                    .as(
                            "“%s” in its place on the sheet of %s",
                            wanted, plan.piece().title())
                    .isTrue();
            at = found.end();
        }
        assertThat(ROW.matcher(all).results().count())
                .as("rows on the sheet")
                .isEqualTo(expected.stream()
                        .filter(text -> ROW.matcher(text).lookingAt())
                        .count());
    }

    /** Every cut, in the order of use. */
    private static List<String> cuts(Plan plan) {
        List<String> cuts = new ArrayList<>();
        for (EndPlan end : List.of(plan.start(), plan.top())) {
            for (BlockPlan block : end.blocks()) {
                block.work().ifPresent(work -> {
                    Butterflies butterflies = work.cut().butterflies();
                    double each = butterflies.count() == 1 ? work.cut().length() : butterflies.each();
                    cuts.add(butterflies.count() + " ×" + plan.piece().shown().cut(each));
                });
            }
        }
        return cuts;
    }

    /** Every block that is worked on the loom, with its rows and the height that it reaches. */
    private static List<String> work(EndPlan end, Plan plan) {
        Words words = new Words(Locale.UK);
        Shown shown = plan.piece().shown();
        List<String> said = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            if (!(block.block() instanceof EdgeFinish)) {
                said.add(words.name(block.block()));
                block.work().ifPresent(work -> rows(work, said));
                if (block.height() > 0) {
                    said.add("↑ " + Shown.inFullHeight(shown.height(end.reach(block))));
                }
            }
        }
        return said;
    }

    private static void rows(Work work, List<String> said) {
        int told = work.rows().size() <= TOLD ? work.rows().size() : 2;
        for (Row row : work.rows().subList(0, told)) {
            String way = row.from() == Side.LEFT ? "→" : "←";
            said.add(row.number() + way + word(row, work));
        }
        if (told < work.rows().size()) {
            said.add((told + 1) + "–" + work.rows().size());
        }
    }

    /** A pick is told by the outermost end at the side where it begins: with an even warp the right one goes the other way. */
    private static String word(Row row, Work work) {
        if (row.shed().isPresent()) {
            boolean overLeft = row.shed().get() == Shed.OVER_FIRST;
            boolean right = row.from() == Side.RIGHT;
            boolean over = overLeft != (right && work.setting().ends() % 2 == 0);
            return (over ? "over" : "under") + (right ? "right" : "left");
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
        Reader reader = read(plan, setup);
        double minute = metres * 1000 * 6.283 / 21600;
        List<Run> rows = reader.runs.stream()
                .filter(run -> run.text().matches("(\\d+ [→←] |↑ ).*"))
                .toList();
        assertThat(rows).hasSizeGreaterThan(20);
        // the file counts in hundredths of a point
        assertThat(rows).allMatch(run -> run.high() >= 20 * minute - 0.01);
        List<Run> names = reader.runs.stream()
                .filter(run -> run.text().matches("\\d+  ?(Twining|Soumak|Facing|Waste band).*"))
                .toList();
        assertThat(names).hasSizeGreaterThanOrEqualTo(8);
        assertThat(names).allMatch(run -> run.high() >= 16 * minute - 0.01);
    }
}

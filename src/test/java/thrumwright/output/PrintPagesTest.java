package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.print.DocFlavor;
import javax.print.StreamPrintServiceFactory;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.standard.PageRanges;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.drawing.Fonts;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

class PrintPagesTest {
    private static SheetPages pages(Paper paper, boolean landscape) {
        PageSetup setup = new PageSetup(paper, landscape, 14, 1);
        return new SheetLook(setup, true).layOut(Plan.of(Pieces.panel()), Fonts.load(), Locale.UK);
    }

    @ParameterizedTest
    @CsvSource({"A4, false", "A4, true", "LETTER, false", "TABLOID, true", "A3, true"})
    void thePrinterIsGivenTheWholePaperAtItsOwnSize(Paper paper, boolean landscape) {
        SheetPages pages = pages(paper, landscape);
        PrintPages printed = new PrintPages(pages, Progress.UNWATCHED);
        assertThat(printed.getNumberOfPages()).isEqualTo(pages.count());
        PageFormat format = printed.getPageFormat(0);
        assertThat(format.getPaper().getWidth()).isEqualTo(paper.width());
        assertThat(format.getPaper().getHeight()).isEqualTo(paper.height());
        assertThat(format.getWidth()).isCloseTo(pages.setup().width(), within(1e-9));
        assertThat(format.getHeight()).isCloseTo(pages.setup().height(), within(1e-9));
        assertThat(format.getImageableX()).isZero();
        assertThat(format.getImageableY()).isZero();
        assertThat(format.getImageableWidth()).isCloseTo(pages.setup().width(), within(1e-9));
    }

    @Test
    void whatPrintsIsWhatIsSeen() throws PrinterException {
        SheetPages pages = pages(Paper.A4, false);
        PrintPages printed = new PrintPages(pages, Progress.UNWATCHED);
        BufferedImage seen = PngFile.picture(pages, 0, 72);
        BufferedImage paper = new BufferedImage(seen.getWidth(), seen.getHeight(), BufferedImage.TYPE_INT_RGB);
        var g = paper.createGraphics();
        g.fillRect(0, 0, paper.getWidth(), paper.getHeight());
        assertThat(printed.print(g, printed.getPageFormat(0), 0)).isEqualTo(PrintPages.PAGE_EXISTS);
        g.dispose();
        int[] wanted = seen.getRGB(0, 0, seen.getWidth(), seen.getHeight(), null, 0, seen.getWidth());
        assertThat(paper.getRGB(0, 0, seen.getWidth(), seen.getHeight(), null, 0, seen.getWidth()))
                .isEqualTo(wanted);
        assertThat(printed.print(paper.createGraphics(), printed.getPageFormat(0), pages.count()))
                .isEqualTo(PrintPages.NO_SUCH_PAGE);
    }

    @Test
    void printingIsAbortedWhenAskedTo() {
        List<Integer> told = new ArrayList<>();
        Progress stopping = new Progress() {
            @Override
            public void done(int pages, int all) {
                told.add(pages);
            }

            @Override
            public boolean stopping() {
                return !told.isEmpty();
            }
        };
        PrintPages printed = new PrintPages(pages(Paper.A4, false), stopping);
        BufferedImage paper = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
        assertThatThrownBy(() -> printed.print(paper.createGraphics(), printed.getPageFormat(0), 0))
                .isInstanceOf(PrinterAbortException.class);
        assertThat(told).containsExactly(0);
    }

    /** Through Java's own way to a printer that takes PostScript: paper, range and the check line come out in true size. */
    @ParameterizedTest
    @CsvSource({"A4, 595.276, 841.890", "LETTER, 612, 792"})
    void theCheckLineComesOutOfThePrinterTenCentimetresLong(Paper paper, double width, double height)
            throws PrinterException {
        SheetPages pages = pages(paper, false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setPrintService(StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
                .getPrintService(out));
        job.setPageable(new PrintPages(pages, Progress.UNWATCHED));
        job.print(new HashPrintRequestAttributeSet(new PageRanges(1, 1)));

        String printed = out.toString(StandardCharsets.ISO_8859_1);
        assertThat(printed.lines().filter(line -> line.startsWith("%%Page:"))).hasSize(1);
        Matcher size = Pattern.compile("/PageSize \\[([0-9.]+) ([0-9.]+)]").matcher(printed);
        assertThat(size.find()).isTrue();
        assertThat(Double.parseDouble(size.group(1))).isCloseTo(width, within(0.01));
        assertThat(Double.parseDouble(size.group(2))).isCloseTo(height, within(0.01));
        assertThat(levelEdges(printed)).anyMatch(edge -> Math.abs(edge - 100 * 72 / 25.4) < 0.05);
    }

    /** Lengths of the level edges that are drawn, in points on paper; the page's own edge doesn't count. */
    private static List<Double> levelEdges(String postScript) {
        String page = postScript.substring(postScript.lastIndexOf("%%Page:"));
        assertThat(page).contains("[72 300.0 div 0 0 72 300.0 div 0 0]concat");
        Matcher scale = Pattern.compile("\\[([0-9.]+) 0.0 0.0 [0-9.]+ -?0.0 -?0.0] concat")
                .matcher(page);
        assertThat(scale.find()).isTrue();
        double points = 72 / 300.0 * Double.parseDouble(scale.group(1));
        Pattern corner = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+) [ML]");
        List<Double> edges = new ArrayList<>();
        double x = 0;
        double y = Double.NaN;
        for (String line : page.lines().toList()) {
            Matcher next = corner.matcher(line.strip());
            if (next.matches()) {
                double toX = Double.parseDouble(next.group(1));
                double toY = Double.parseDouble(next.group(2));
                if (Math.abs(toY - y) < 1e-6 && Math.min(x, toX) > 1) {
                    edges.add(points * Math.abs(toX - x));
                }
                x = toX;
                y = toY;
            }
        }
        return edges;
    }
}

package thrumwright.output.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.Pictures;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Part;
import thrumwright.output.page.PlacedPart;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;

/** What a page looks like in a PDF, drawn by PDFBox, against the same page painted straight into a picture. */
class PdfCanvasTest {
    /** A point a dot, for yarns are drawn as finely as the dots allow, and a PDF counts in points. */
    private static final double DPI = 72;

    /** Where dots that share a dot of the picture are painted one by one, not together, it is darker by a shade. */
    private static final double FINE_DPI = 300;

    /** Small letters are smoothed in another way, and most of a sheet is that; softened, both have the same colour. */
    private static final double SMOOTHED = 0.2;

    private static final double HARDLY = 0.04;
    private static final Fonts FONTS = Fonts.load();

    /** A page on which only this is painted, from the upper left corner, 400 points wide and high. */
    private static SheetPages page(Consumer<Graphics2D> painting) {
        Part part = new Part() {
            @Override
            public double height(double width) {
                return 400;
            }

            @Override
            public void paint(Graphics2D g, double x, double y, double width) {
                painting.accept(g);
            }
        };
        PageSetup setup = PageSetup.usual(Paper.A4);
        Type type = new Type(FONTS, 1, 1);
        List<PlacedPart> placed = List.of(new PlacedPart(part, 0, 0, 400, 400));
        return new SheetPages(setup, "Page", type, Palette.onPaper(), List.of(placed));
    }

    private static byte[] pdf(SheetPages pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages, out);
        return out.toByteArray();
    }

    private static BufferedImage asItIs(BufferedImage picture) {
        return picture;
    }

    /** Each dot the mean of nine. */
    private static BufferedImage softened(BufferedImage picture) {
        float[] mean = new float[9];
        Arrays.fill(mean, 1 / 9f);
        return new ConvolveOp(new Kernel(3, 3, mean)).filter(picture, null);
    }

    /**
     * @param share how much of what is painted may differ
     * @param seen how the pictures are looked at
     */
    private static void assertLooksTheSame(SheetPages pages, double share, UnaryOperator<BufferedImage> seen)
            throws IOException {
        assertLooksTheSame(pages, share, seen, DPI);
    }

    private static void assertLooksTheSame(
            SheetPages pages, double share, UnaryOperator<BufferedImage> seen, double dpi) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(pages))) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages.count());
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < pages.count(); page++) {
                BufferedImage wanted = seen.apply(PngFile.picture(pages, page, dpi));
                BufferedImage found = seen.apply(renderer.renderImageWithDPI(page, (float) dpi, ImageType.RGB));
                double all = Pictures.difference(wanted, Pictures.blank(wanted));
                assertThat(Pictures.difference(wanted, found) / all)
                        .as("page %d", page + 1)
                        .isLessThan(share);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"saltmarsh-panel", "reed-bed-fringe"})
    void sheetsLookTheSame(String piece) throws Exception {
        Plan plan = Plan.of(PieceFile.read(BuiltIn.DEMO.text(piece + ".json")).piece());
        assertLooksTheSame(
                SheetLayout.of(plan, PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK),
                SMOOTHED,
                PdfCanvasTest::softened);
    }

    private static Path2D star(double x, double y, double size) {
        Path2D star = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (int i = 0; i < 5; i++) {
            double angle = 4 * Math.PI * i / 2;
            double toX = x + size * Math.sin(angle);
            double toY = y - size * Math.cos(angle);
            if (i == 0) {
                star.moveTo(toX, toY);
            } else {
                star.lineTo(toX, toY);
            }
        }
        star.closePath();
        return star;
    }

    @Test
    void holesBendsAndDashesLookTheSame() throws IOException {
        assertLooksTheSame(
                page(g -> {
                    g.setColor(new Color(0x1d6a73));
                    g.fill(star(120, 130, 100));
                    g.setColor(new Color(0xa8321f));
                    g.setStroke(new BasicStroke(
                            9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_BEVEL, 10, new float[] {30, 14}, 8));
                    Path2D bend = new Path2D.Double();
                    bend.moveTo(30, 300);
                    bend.quadTo(150, 150, 250, 330);
                    bend.curveTo(260, 380, 350, 380, 370, 240);
                    g.draw(bend);
                    g.setStroke(new BasicStroke(5));
                    g.draw(star(300, 110, 80));
                }),
                HARDLY,
                PdfCanvasTest::asItIs);
    }

    @Test
    void clipsTurnsAndUnevenScalesLookTheSame() throws IOException {
        assertLooksTheSame(
                page(g -> {
                    Graphics2D within = (Graphics2D) g.create();
                    within.clip(new Ellipse2D.Double(40, 40, 220, 200));
                    within.clip(new Rectangle2D.Double(80, 30, 300, 300));
                    within.setColor(Color.ORANGE);
                    within.fillRect(0, 0, 400, 400);
                    within.rotate(0.3, 150, 150);
                    within.setColor(Color.BLACK);
                    within.setFont(FONTS.bold().deriveFont(40f));
                    within.drawString("turned left ½", 60, 150);
                    within.dispose();
                    g.setColor(Color.BLUE);
                    g.translate(200, 260);
                    g.scale(3, 1);
                    g.setStroke(new BasicStroke(6));
                    g.draw(new Rectangle2D.Double(0, 0, 40, 60));
                    g.scale(1 / 3.0, 1);
                    g.setFont(FONTS.regular().deriveFont(30f));
                    g.drawString("潮 and mud", -150, 40);
                }),
                HARDLY,
                PdfCanvasTest::asItIs);
    }

    /** Rows of dots, alternately set off, as beads of yarn lie. */
    private static Path2D rows(int rows, int dots) {
        Path2D path = new Path2D.Double();
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i < dots; i++) {
                int place = row % 2 == 0 ? i : dots - 1 - i;
                double x = 30 + 5.3 * place + (row % 2 == 0 ? 0 : 2.7);
                path.append(new Ellipse2D.Double(x, 20 + 4.1 * row, 4.4, 3.9).getPathIterator(null), false);
            }
        }
        return path;
    }

    @Test
    void whatComesAgainLooksTheSame() throws IOException {
        assertLooksTheSame(
                page(g -> {
                    g.setColor(Color.GREEN);
                    g.fill(rows(30, 60));
                    g.setColor(Color.BLACK);
                    g.setStroke(new BasicStroke(0.6f));
                    g.draw(rows(30, 60));
                    Graphics2D within = (Graphics2D) g.create();
                    within.translate(40, 160);
                    within.clip(new Rectangle2D.Double(60, 50, 120, 70));
                    within.setColor(Color.RED);
                    within.fill(rows(30, 60));
                    within.setStroke(new BasicStroke(1.8f));
                    within.draw(rows(30, 60));
                }),
                HARDLY,
                PdfCanvasTest::asItIs,
                FINE_DPI);
    }

    @Test
    void whatComesAgainIsWrittenOnce() throws IOException {
        int few = pdf(page(g -> g.fill(rows(6, 60)))).length;
        int many = pdf(page(g -> g.fill(rows(60, 60)))).length;
        assertThat(many - few).isBetween(1, 1000);
    }

    @Test
    void picturesAndForeignFontsAreRefused() {
        BufferedImage picture = Pictures.blank(3, 3);
        assertThatThrownBy(() -> pdf(page(g -> g.drawImage(picture, 0, 0, null))))
                .isInstanceOf(UnsupportedOperationException.class)
                .hasMessage("sheets are drawn without pictures");
        assertThatThrownBy(() -> pdf(page(g -> g.drawString("x", 0, 0)))).isInstanceOf(IllegalArgumentException.class);
    }

    /** Pages are on their way while others are added: only a few wait, and none for the last one. */
    @Test
    void pagesAreWrittenAsTheyCome() throws IOException {
        int count = 60;
        SheetPages pages = page(g -> g.fill(rows(40, 80)));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfFile file = new PdfFile("Many sheets", out)) {
            for (int i = 0; i < count; i++) {
                file.add(pages, Progress.UNWATCHED);
            }
            String before = out.toString(StandardCharsets.ISO_8859_1);
            assertThat(before.split("\nendstream", -1)).hasSizeGreaterThan(count - 20);
            file.finish();
        }
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(count);
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Many sheets");
        }
    }
}

package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.card.CardPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;

/** The sheet for a browser as the browser prints it, where one is installed: the cards are pages of their own. */
class HtmlPrintTest {
    private static final int DPI = 72;
    /** What stands below on the first card. */
    private static final Pattern BEGIN = Pattern.compile("(?m)^Begin\\s+↑");

    private static final Fonts FONTS = Fonts.load();

    @TempDir
    Path folder;

    private static Plan plan() throws Exception {
        return Plan.of(PieceFile.read(BuiltIn.DEMO.text("saltmarsh-panel.json")).piece());
    }

    private static String html(Plan plan) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetLook look = new SheetLook(PageSetup.usual(Paper.A4), true);
        new SheetFiles(plan, look, () -> FONTS, Locale.UK)
                .write(SheetForm.HTML, "x.html", 100, Progress.UNWATCHED, (name, content) -> content.writeTo(out));
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theDemoWithItsCardsIsLight() throws Exception {
        assertThat(html(plan()).getBytes(StandardCharsets.UTF_8).length).isLessThan(400_000);
    }

    @Test
    void theBrowserPrintsTheSameCards() throws Exception {
        Optional<Path> program = Browser.installed();
        Assumptions.assumeTrue(program.isPresent(), "no browser is installed here, so nothing is printed by one");
        Plan plan = plan();
        Path file = Files.writeString(folder.resolve("panel.html"), html(plan));
        SheetPages cards = CardPages.of(
                plan, StepSheet.of(plan, Locale.UK), PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
        try (Browser browser = new Browser(program.orElseThrow(), folder.resolve("profile"))) {
            browser.open(file.toUri());
            try (PDDocument printed = Loader.loadPDF(browser.printed(215.9, 279.4))) {
                int first = firstCard(printed);
                for (int card = 0; card < cards.count(); card++) {
                    PDRectangle paper = printed.getPage(first + card).getMediaBox();
                    assertThat(paper.getWidth()).isCloseTo((float) cards.setup().width(), within(1f));
                    assertThat(paper.getHeight())
                            .isCloseTo((float) cards.setup().height(), within(1f));
                    assertSame(new PDFRenderer(printed).renderImageWithDPI(first + card, DPI), cards, card);
                }
            }
        }
    }

    private static int firstCard(PDDocument printed) throws IOException {
        PDFTextStripper words = new PDFTextStripper();
        for (int page = 1; page <= printed.getNumberOfPages(); page++) {
            words.setStartPage(page);
            words.setEndPage(page);
            if (BEGIN.matcher(words.getText(printed)).find()) {
                return page - 1;
            }
        }
        throw new AssertionError("no page begins at the lower bar");
    }

    /** In whatever font the browser has: half of the ink, at least, is where it is on the card. */
    private static void assertSame(BufferedImage page, SheetPages cards, int card) {
        BufferedImage wanted = PngFile.picture(cards, card, DPI);
        double blank = Pictures.difference(wanted, Pictures.blank(wanted));
        assertThat(Pictures.difference(page, wanted)).as("card " + (card + 1)).isLessThan(blank / 2);
    }
}

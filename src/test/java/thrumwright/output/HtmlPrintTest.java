package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
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
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;

/** The sheet for a browser as the browser prints it, where one is installed: its last pages are the cards. */
class HtmlPrintTest {
    private static final int DPI = 72;
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
        SheetPages cards =
                CardPages.of(plan, Optional.empty(), PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
        try (Browser browser = new Browser(program.orElseThrow(), folder.resolve("profile"))) {
            browser.open(file.toUri());
            try (PDDocument printed = Loader.loadPDF(browser.printed(210, 297))) {
                int first = printed.getNumberOfPages() - cards.count();
                for (int card = 0; card < cards.count(); card++) {
                    BufferedImage page = new PDFRenderer(printed).renderImageWithDPI(first + card, DPI);
                    BufferedImage wanted = PngFile.picture(cards, card, DPI);
                    double blank = Pictures.difference(wanted, Pictures.blank(wanted));
                    assertThat(Pictures.difference(page, wanted))
                            .as("card " + card)
                            .isLessThan(blank / 6);
                }
            }
        }
    }
}

package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.SheetPages;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.Yarn;

class SheetLookTest {
    private final Fonts fonts = Fonts.load();
    private final PageSetup setup = PageSetup.usual(Paper.A4);

    private static boolean hasColour(SheetPages pages, int page) {
        BufferedImage image = PngFile.picture(pages, page, 40);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                if ((rgb >> 16 & 0xff) != (rgb & 0xff) || (rgb >> 8 & 0xff) != (rgb & 0xff)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void aSheetInBlackAndWhiteHasNoColourOnAnyPage() {
        Plan plan = Plan.of(Pieces.panel());
        SheetPages grey = new SheetLook(setup, false).layOut(plan, fonts, Locale.UK);
        for (int page = 0; page < grey.count(); page++) {
            assertThat(hasColour(grey, page)).as("page %d", page + 1).isFalse();
        }
        assertThat(hasColour(new SheetLook(setup, true).layOut(plan, fonts, Locale.UK), 0))
                .isTrue();
    }

    /** Off unless it is chosen; then a box is ticked for each row that is done, and the rest of the page is the same. */
    @Test
    void boxesOfWhatIsDoneAreTickedWhereThatIsChosen() {
        LocalDateTime noon = LocalDateTime.of(2026, 11, 28, 12, 0);
        Piece piece = Pieces.panel();
        Ticks ticks = Ticks.NONE;
        for (int i = 0; i < 7; i++) {
            ticks = ticks.with("start/waste", noon);
        }
        Plan ticked = Plan.of(piece.withTicks(ticks));
        SheetLook usual = new SheetLook(setup, true, Set.of(SheetSection.CARDS));
        SheetPages bare = usual.layOut(Plan.of(piece), fonts, Locale.UK);
        SheetPages unchosen = usual.layOut(ticked, fonts, Locale.UK);
        SheetPages chosen = usual.showing(true).layOut(ticked, fonts, Locale.UK);
        assertThat(chosen.count()).isEqualTo(bare.count());
        assertThat(differing(bare, unchosen, 0)).isZero();
        assertThat(differing(bare, chosen, 0)).isGreaterThan(7 * 10);
        assertThat(differing(bare, chosen, 1)).isZero();
    }

    private static int differing(SheetPages one, SheetPages other, int page) {
        BufferedImage first = PngFile.picture(one, page, 72);
        BufferedImage second = PngFile.picture(other, page, 72);
        int count = 0;
        for (int y = 0; y < first.getHeight(); y++) {
            for (int x = 0; x < first.getWidth(); x++) {
                count += first.getRGB(x, y) == second.getRGB(x, y) ? 0 : 1;
            }
        }
        return count;
    }

    /** Yarns of different colours get different greys, however alike their lightness. */
    @Test
    void yarnsAreToldApartInBlackAndWhite() {
        RandomPieces pieces = new RandomPieces(12);
        for (int i = 0; i < Seeds.of(50); i++) {
            Plan plan = Plan.of(pieces.next());
            Palette palette = new SheetLook(setup, false).palette(plan);
            Set<Object> colours = new HashSet<>();
            Set<Object> greys = new HashSet<>();
            for (Yarn yarn : plan.piece().yarns()) {
                colours.add(yarn.colour());
                greys.add(palette.yarn(yarn.colour()));
            }
            assertThat(greys).hasSameSizeAs(colours);
        }
    }

    /** Whoever hears a page hears all that is written on it, and words for its drawings. */
    @Test
    void aPageInWordsSaysWhatIsOnIt() {
        SheetPages pages = new SheetLook(setup, true).layOut(Plan.of(Pieces.panel()), fonts, Locale.UK);
        assertThat(pages.words(0))
                .startsWith("Worked panel\n")
                .contains("Cut first", "195 cm", "This must be 100 mm long;");
        for (int page = 0; page < pages.count(); page++) {
            assertThat(pages.words(page).lines()).as("page %d", page + 1).hasSizeGreaterThan(2);
        }
    }
}

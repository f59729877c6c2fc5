package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import thrumwright.output.page.PlacedPart;
import thrumwright.output.page.SheetPages;

/** What must hold for any pages. */
final class LayoutChecks {
    private static final double HAIR = 1e-6;
    /** Ink that shares less, in width or height, touches at most, points. */
    private static final double TOUCH = 0.75;

    private LayoutChecks() {}

    static void assertNothingOverlapsOrLeavesThePage(SheetPages pages) {
        assertThat(pages.count()).isPositive();
        for (int page = 0; page < pages.count(); page++) {
            List<PlacedPart> parts = pages.parts(page);
            assertThat(parts).isNotEmpty();
            double below = 0;
            for (PlacedPart part : parts) {
                assertThat(part.y()).isGreaterThanOrEqualTo(below - HAIR);
                assertThat(part.x()).isGreaterThanOrEqualTo(0);
                assertThat(part.x() + part.width())
                        .isLessThanOrEqualTo(pages.setup().width());
                assertThat(part.height()).isCloseTo(part.part().height(part.width()), within(HAIR));
                below = part.y() + part.height();
            }
            assertThat(below)
                    .as("page %d of %s", page, pages.title())
                    .isLessThan(pages.setup().height() - 10);
        }
    }

    /**
     * No text runs into another, into a box to tick or into a figure, by the ink of the font's own glyphs; all of it lies
     * where its part lies.
     */
    static void assertInkLiesFree(SheetPages pages) {
        for (int page = 0; page < pages.count(); page++) {
            List<InkBoxes.Ink> all = new ArrayList<>();
            for (PlacedPart part : pages.parts(page)) {
                InkBoxes ink = new InkBoxes();
                part.part().paint(ink, part.x(), part.y(), part.width());
                Rectangle2D place =
                        new Rectangle2D.Double(part.x() - 1, part.y() - 1, part.width() + 2, part.height() + 2);
                for (InkBoxes.Ink each : ink.inks()) {
                    if (!place.contains(each.box())) {
                        throw new AssertionError("“" + each.what() + "” lies at " + each.box() + ", out of " + place
                                + " on page " + (page + 1) + " of " + pages.title());
                    }
                }
                all.addAll(ink.inks());
            }
            for (int i = 0; i < all.size(); i++) {
                for (int k = i + 1; k < all.size(); k++) {
                    assertApart(all.get(i), all.get(k), (page + 1) + " of " + pages.title());
                }
            }
        }
    }

    private static void assertApart(InkBoxes.Ink one, InkBoxes.Ink other, String page) {
        Rectangle2D shared = one.box().createIntersection(other.box());
        if (shared.getWidth() > TOUCH && shared.getHeight() > TOUCH) {
            throw new AssertionError(
                    "“" + one.what() + "” and “" + other.what() + "” share " + shared + " on page " + page);
        }
    }

    /** What a part paints stays in the place that it asked for. */
    static void assertPartsPaintWhereTheyAre(SheetPages pages) {
        for (int page = 0; page < pages.count(); page++) {
            pages.parts(page).forEach(LayoutChecks::assertInside);
        }
    }

    private static void assertInside(PlacedPart placed) {
        int spare = 30;
        BufferedImage image = new BufferedImage(
                (int) placed.width() + 2 * spare, (int) placed.height() + 2 * spare, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        placed.part().paint(g, spare, spare, placed.width());
        g.dispose();
        int allowed = 4;
        for (int y = 0; y < image.getHeight(); y++) {
            boolean outside = y < spare - allowed || y > spare + placed.height() + allowed;
            for (int x = 0; x < image.getWidth(); x++) {
                boolean beside = x < spare - allowed || x > spare + placed.width() + allowed;
                if ((outside || beside) && (image.getRGB(x, y) >>> 24) > 40) {
                    throw new AssertionError(placed.part() + " paints at " + (x - spare) + ", " + (y - spare) + " of "
                            + placed.width() + " × " + placed.height());
                }
            }
        }
    }
}

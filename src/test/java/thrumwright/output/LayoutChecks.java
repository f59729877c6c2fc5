package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** What must hold for any pages. */
final class LayoutChecks {
    private static final double HAIR = 1e-6;

    private LayoutChecks() {}

    static void assertNothingOverlapsOrLeavesThePage(SheetPages pages) {
        assertThat(pages.count()).isPositive();
        for (int page = 0; page < pages.count(); page++) {
            List<Pages.Placed> parts = pages.parts(page);
            assertThat(parts).isNotEmpty();
            double below = 0;
            for (Pages.Placed part : parts) {
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

    /** What a part paints stays in the place that it asked for. */
    static void assertPartsPaintWhereTheyAre(SheetPages pages) {
        for (int page = 0; page < pages.count(); page++) {
            pages.parts(page).forEach(LayoutChecks::assertInside);
        }
    }

    private static void assertInside(Pages.Placed placed) {
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

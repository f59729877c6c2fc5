package thrumwright.drawing.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.Sewn;
import thrumwright.testing.Pieces;

/** The finished piece as a whole, with what is sewn to it. */
class SewnPictureTest {
    private static final int ROOM = 20;
    private static final int WIDE = 300;
    private static final int HIGH = 200;
    private static final Palette PAPER = Palette.onPaper();

    private static BufferedImage painted(Destiny destiny, Sewn sewn) {
        Piece piece = Pieces.panel().withDestiny(destiny);
        BufferedImage image = new BufferedImage(WIDE + 2 * ROOM, HIGH + 2 * ROOM, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        Font font = new Font(Font.DIALOG, Font.PLAIN, 9);
        new SewnPicture(Plan.of(piece), sewn, sewn.says(Locale.UK))
                .paint(g, PAPER, font, new Rectangle2D.Double(ROOM, ROOM, WIDE, HIGH));
        g.dispose();
        return image;
    }

    private static int drawn(BufferedImage image, boolean outside) {
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                boolean out = x < ROOM || y < ROOM || x >= ROOM + WIDE || y >= ROOM + HIGH;
                if (out == outside && image.getRGB(x, y) != Color.WHITE.getRGB()) {
                    count++;
                }
            }
        }
        return count;
    }

    private static int count(BufferedImage image, int rgb) {
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                count += image.getRGB(x, y) == rgb ? 1 : 0;
            }
        }
        return count;
    }

    private static Destiny made(MadeFor madeFor) {
        return Destiny.UNSAID.withMadeFor(Optional.of(madeFor));
    }

    private static Destiny corded(EdgeCord.Along along) {
        return made(MadeFor.HUNG).withCord(Optional.of(new EdgeCord(along, Length.parse("6 mm"), false)));
    }

    private static Destiny bordered(String border) {
        return made(MadeFor.MOUNTED).withBorder(Optional.of(Length.parse(border)));
    }

    @Test
    void nothingGoesOutsideItsBox() {
        for (BufferedImage image : List.of(
                painted(corded(EdgeCord.Along.ALL_ROUND), Sewn.CORD),
                painted(made(MadeFor.HUNG).withLined(true), Sewn.LINING),
                painted(bordered("0 cm"), Sewn.BOARD),
                painted(bordered("20 cm"), Sewn.BOARD))) {
            assertThat(drawn(image, true)).isZero();
            assertThat(drawn(image, false)).isGreaterThan(500);
        }
    }

    /** A cord all round shows at the sides too, and a wider border makes the piece smaller. */
    @Test
    void whatIsChosenIsSeen() {
        assertThat(painted(corded(EdgeCord.Along.ALL_ROUND), Sewn.CORD).getRGB(ROOM + WIDE / 2, ROOM + HIGH / 2))
                .isEqualTo(painted(corded(EdgeCord.Along.ENDS), Sewn.CORD).getRGB(ROOM + WIDE / 2, ROOM + HIGH / 2));
        assertThat(drawn(painted(corded(EdgeCord.Along.ALL_ROUND), Sewn.CORD), false))
                .isGreaterThan(drawn(painted(corded(EdgeCord.Along.ENDS), Sewn.CORD), false));

        int stripe = PAPER.yarn(Pieces.panel().stripe(Place.START).colour()).getRGB();
        assertThat(count(painted(bordered("0 cm"), Sewn.BOARD), stripe))
                .isGreaterThan(count(painted(bordered("10 cm"), Sewn.BOARD), stripe))
                .isPositive();
    }
}

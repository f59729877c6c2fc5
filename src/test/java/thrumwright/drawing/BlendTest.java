package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Course;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Face;
import thrumwright.testing.WorkedPanel;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Yarn;

/** A weft of strands of several colours is drawn as a blend. */
class BlendTest {
    private static final Yarn BLUE = WorkedPanel.weft().withId("blue").withColour(new Colour(0x1030c0));
    private static final Yarn RED = WorkedPanel.weft().withId("red").withColour(new Colour(0xc03010));

    private static Yarn wound(Strands... strands) {
        return Yarn.wound("blend", "Blend", new Bundle(List.of(strands)));
    }

    private static BufferedImage cloth(Yarn weft, double scale) {
        BufferedImage image = new BufferedImage(480, 80, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 480, 80);
        Setting setting = new Setting(9, 8, 1.6, 1.6, 1.6, Optional.empty());
        BlockPicture band = BlockPicture.picks(weft, setting, 5, new Course(Optional.of(Shed.UNDER_FIRST), Side.LEFT));
        new ClothPainter(g, Palette.onPaper(), true, Face.FRONT)
                .blocks(
                        new View(scale, 30, 64),
                        List.of(new ClothPainter.PlacedBlock(band, 0, band.height())),
                        List.of(),
                        setting,
                        WorkedPanel.cord(),
                        -1,
                        10);
        g.dispose();
        return image;
    }

    private static long pixels(BufferedImage image, Colour like) {
        Color wanted = new Color(like.rgb());
        return Arrays.stream(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .mapToObj(Color::new)
                .filter(seen -> Math.abs(seen.getRed() - wanted.getRed())
                                + Math.abs(seen.getGreen() - wanted.getGreen())
                                + Math.abs(seen.getBlue() - wanted.getBlue())
                        < 40)
                .count();
    }

    /** Close up each strand is seen in its own colour, the more of it the more there are. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 8})
    void strandsAreSeenInTheirColours(double scale) {
        BufferedImage image = cloth(wound(new Strands(BLUE, 4), new Strands(RED, 1)), scale);
        long blue = pixels(image, BLUE.colour());
        long red = pixels(image, RED.colour());
        assertThat(red).isPositive();
        assertThat(blue).isGreaterThan(2 * red);
    }

    /** Strands of one colour are a yarn of that colour and no more. */
    @Test
    void strandsOfOneColourShowNoOther() {
        Yarn alike = RED.withColour(BLUE.colour());
        BufferedImage image = cloth(wound(new Strands(BLUE, 2), new Strands(alike, 2)), 6);
        assertThat(pixels(image, new Colour(0xc03010))).isZero();
        assertThat(pixels(image, BLUE.colour())).isPositive();
    }

    /** From afar nothing is seen but the blend. */
    @Test
    void fromAfarItIsOneColour() {
        Yarn blend = wound(new Strands(BLUE, 1), new Strands(RED, 1));
        BufferedImage image = cloth(blend, 0.9);
        assertThat(pixels(image, RED.colour())).isZero();
        assertThat(pixels(image, BLUE.colour())).isZero();
        assertThat(pixels(image, blend.colour())).isPositive();
    }
}

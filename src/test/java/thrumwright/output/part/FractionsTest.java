package thrumwright.output.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.output.page.Paper;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/** The figures of a fraction that must be read from afar, measured where they are painted. */
class FractionsTest {
    private static final int SCALE = 4;
    private static final Shown INCHES = new Shown(UnitSystem.INCHES);

    private final Type type = new Type(Fonts.load(), 1, 1);

    /** How high what is painted stands, glyph by glyph, mm. */
    private List<Double> heights(double inches) {
        BufferedImage image = new BufferedImage(400 * SCALE, 60 * SCALE, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(SCALE, SCALE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        String figures = INCHES.figures(inches * 25.4) + " " + INCHES.unit();
        new TextPart("↑ " + figures, type.essential(), Palette.onPaper().ink()).paint(g, 4, 10, 390);
        g.dispose();
        List<Double> heights = new ArrayList<>();
        int top = Integer.MAX_VALUE;
        int bottom = -1;
        for (int x = 0; x < image.getWidth(); x++) {
            boolean ink = false;
            for (int y = 0; y < image.getHeight(); y++) {
                if (image.getRaster().getSample(x, y, 0) < 128) {
                    ink = true;
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
            if (!ink && bottom >= 0) {
                heights.add((bottom - top + 1) / (SCALE * Paper.POINTS));
                top = Integer.MAX_VALUE;
                bottom = -1;
            }
        }
        return heights;
    }

    /**
     * Of “↑ 8 1/16 in” all between the arrow and the unit. Capitals stand 20′ at 1 m, 5.818 mm (NUREG-0700 rev. 2); the figures of
     * this face are 3 % lower than its capitals, all of them alike.
     */
    @Test
    void theFiguresOfAFractionAreAsTallAsAllOthers() {
        List<Double> glyphs = heights(8.0625);
        double whole = heights(8).get(1);

        assertThat(whole).isBetween(0.965 * 5.818, 1.01 * 5.818);
        assertThat(glyphs.subList(1, 6)).allSatisfy(high -> assertThat(high).isGreaterThan(0.965 * whole));
        assertThat(heights(0.5).subList(1, 4))
                .allSatisfy(high -> assertThat(high).isGreaterThan(0.965 * whole));
    }

    /** Left as a fraction's own sign they would be little more than half as tall. */
    @Test
    void aSignForAFractionWouldBeTooSmall() {
        Font large = type.essential();

        assertThat(large.createGlyphVector(new FontRenderContext(null, true, true), "₆")
                        .getVisualBounds()
                        .getHeight())
                .isLessThan(0.65
                        * large.createGlyphVector(new FontRenderContext(null, true, true), "6")
                                .getVisualBounds()
                                .getHeight());
    }
}

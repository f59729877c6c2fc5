package thrumwright.editor.loom;

import java.awt.Font;
import thrumwright.drawing.Fonts;
import thrumwright.output.page.Type;

/**
 * Type that is read from the loom.
 *
 * @param fonts the program's own
 * @param pixels of the window per mm of its screen, more than 0
 * @param share of the size that it should have; less than 1 only on a screen that is too small for it
 */
record LoomType(Fonts fonts, double pixels, double share) {
    /** From so many metres it is to be read, and under so many minutes of arc (NUREG-0700 rev. 2, 1.3.1-4). */
    static final double METRES = 2;

    private static final double MINUTES = 20;
    /** What comes next needn't be read from there. */
    private static final double SMALL = 0.5;
    /** A row stands out among what is said beside it. */
    private static final double LARGEST = 2;

    /** Type size of what must be read, pixels. */
    private float usual() {
        return (float) (share * Type.capitalHeight(METRES, MINUTES) * pixels / Type.CAPITAL);
    }

    /** The least height of its capitals on the screen, mm, more than 0. */
    double capitals() {
        return usual() * Type.CAPITAL / pixels;
    }

    Font head() {
        return fonts.bold().deriveFont(usual());
    }

    Font words() {
        return fonts.regular().deriveFont(usual());
    }

    /** @param larger 0 to 1, as much larger as there is room for */
    Font row(double larger) {
        return fonts.semibold().deriveFont((float) (usual() * (1 + (LARGEST - 1) * larger)));
    }

    Font small() {
        return fonts.regular().deriveFont((float) (usual() * SMALL));
    }

    LoomType smaller() {
        return new LoomType(fonts, pixels, share * 0.92);
    }
}

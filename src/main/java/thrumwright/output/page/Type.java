package thrumwright.output.page;

import java.awt.Font;
import thrumwright.drawing.Fonts;

/**
 * The type of a sheet that hangs at a distance.
 *
 * @param fonts the program's own
 * @param distance from the eye to the hanging sheet, m
 * @param density size of drawings and of what is read from close by, 1 as usual; less fits more on a page
 */
public record Type(Fonts fonts, double distance, double density) {
    /** Capital height over type size of Source Sans 3, measured on its H. */
    public static final double CAPITAL = 0.654;
    /** Minutes of arc at which what is read while weaving stands (NUREG-0700 rev. 2, 1.3.1-4). */
    static final double MINUTES = 20;
    /** The fewest at which letters can be read without trouble (the same). */
    static final double LEAST_MINUTES = 16;

    private static final float LARGEST_HEADING = 34;

    /** Capital height in mm, 0 or more, that is seen under so many minutes of arc (NUREG-0700 rev. 2: H = distance × minutes × 6.283/21600). */
    public static double capitalHeight(double metres, double minutes) {
        return metres * 1000 * minutes * 2 * Math.PI / 21600;
    }

    /** Type size in points of what must be read from the loom. */
    public float large() {
        return size(MINUTES);
    }

    private float size(double minutes) {
        return (float) (capitalHeight(distance, minutes) / CAPITAL * Paper.POINTS);
    }

    /** Side of a box to tick beside such type: points, more than 0. */
    public static double box(Font beside) {
        return beside.getSize2D() * 0.72;
    }

    private float close(double points) {
        return (float) (points * density);
    }

    /** Of tables. */
    public Font table() {
        return fonts.regular().deriveFont(close(11.5));
    }

    public Font tableStrong() {
        return fonts.semibold().deriveFont(close(11.5));
    }

    public Font title() {
        return fonts.bold().deriveFont(26f);
    }

    /** Of a step's name: no larger than fits a line, but never too small to be read from the loom. */
    public Font heading() {
        return fonts.bold().deriveFont(Math.max(size(LEAST_MINUTES), Math.min(LARGEST_HEADING, large())));
    }

    public Font essential() {
        return fonts.semibold().deriveFont(large());
    }

    public Font strong() {
        return fonts.semibold().deriveFont(close(12.5));
    }

    public Font body() {
        return fonts.regular().deriveFont(close(12.5));
    }

    public Font aside() {
        return fonts.italic().deriveFont(close(11.5));
    }

    public Font small() {
        return fonts.regular().deriveFont(10f);
    }
}

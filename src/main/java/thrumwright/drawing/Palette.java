package thrumwright.drawing;

import java.awt.Color;
import thrumwright.yarn.Colour;

/**
 * The colours of a drawing apart from the yarns' own.
 *
 * @param paper what it is drawn on
 * @param ink lines and words
 * @param faint quieter lines and words
 * @param accent the fold, the stop line and whatever else should be noticed; never the only sign of it
 * @param post the loom's posts
 * @param coloured whether yarns keep their colour; otherwise they become greys of the same lightness
 */
public record Palette(Color paper, Color ink, Color faint, Color accent, Color post, boolean coloured) {
    public static Palette onPaper() {
        return new Palette(
                Color.WHITE, new Color(0x1d2326), new Color(0x5a6468), new Color(0xa8321f), new Color(0xc9c4ba), true);
    }

    public static Palette blackAndWhite() {
        return new Palette(Color.WHITE, Color.BLACK, new Color(0x555555), Color.BLACK, new Color(0xcccccc), false);
    }

    public static Palette onLightScreen() {
        return new Palette(
                new Color(0xfaf7f0),
                new Color(0x1d2326),
                new Color(0x566064),
                new Color(0xa8321f),
                new Color(0xcfc9bd),
                true);
    }

    public static Palette onDarkScreen() {
        return new Palette(
                new Color(0x22282b),
                new Color(0xf0ece2),
                new Color(0xb3bcc0),
                new Color(0xff9d7e),
                new Color(0x6d7478),
                true);
    }

    /** A yarn's colour as this palette shows it. */
    Color yarn(Colour colour) {
        Color own = new Color(colour.rgb());
        if (coloured) {
            return own;
        }
        return grey(own);
    }

    /** A grey as light as a colour, drawn together so that neither end drowns the lines in it. */
    static Color grey(Color colour) {
        int level = (int) Math.round(70 + 175 * lightness(colour));
        return new Color(level, level, level);
    }

    /** How light a colour is, from 0 for black to 1 for white. */
    static double lightness(Color colour) {
        return (0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue()) / 255;
    }

    /** So much of the way from one colour to another, 0 to 1. */
    static Color mixed(Color from, Color to, double share) {
        return new Color(
                channel(from.getRed(), to.getRed(), share),
                channel(from.getGreen(), to.getGreen(), share),
                channel(from.getBlue(), to.getBlue(), share));
    }

    private static int channel(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }
}

package thrumwright.drawing;

import java.awt.Color;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thrumwright.yarn.Colour;

/**
 * The colours of a drawing apart from the yarns' own.
 *
 * @param paper what it is drawn on
 * @param ink lines and words
 * @param faint quieter lines and words
 * @param accent the fold, the stop line and whatever else should be noticed; never the only sign of it
 * @param post the loom's posts
 * @param coloured whether yarns keep their colour; otherwise they become greys
 * @param greys of yarns that are to be told apart, if they don't keep their colour
 */
public record Palette(
        Color paper, Color ink, Color faint, Color accent, Color post, boolean coloured, Map<Colour, Integer> greys) {
    private static final double DARKEST = 64;
    private static final double LIGHTEST = 240;
    /** Greys at least so far apart, of 256 levels, are told apart in print (from memory). */
    private static final double TOLD_APART = 26;

    public Palette {
        greys = Map.copyOf(greys);
    }

    public static Palette onPaper() {
        return new Palette(
                Color.WHITE, new Color(0x1d2326), new Color(0x5a6468), new Color(0xa8321f), new Color(0xc9c4ba), true);
    }

    /** A palette whose yarns, if they don't keep their colour, become greys of their own lightness. */
    public Palette(Color paper, Color ink, Color faint, Color accent, Color post, boolean coloured) {
        this(paper, ink, faint, accent, post, coloured, Map.of());
    }

    /**
     * Greys only, for a printer without colours.
     *
     * @param yarns colours that have to be told apart; they become greys in the order of their lightness
     */
    public static Palette blackAndWhite(Collection<Colour> yarns) {
        List<Colour> darkestFirst = yarns.stream()
                .distinct()
                .sorted(Comparator.comparingDouble((Colour yarn) -> lightness(new Color(yarn.rgb())))
                        .thenComparingInt(Colour::rgb))
                .toList();
        double[] levels = darkestFirst.stream()
                .mapToDouble(yarn -> grey(new Color(yarn.rgb())).getRed())
                .toArray();
        double apart = Math.min(TOLD_APART, (LIGHTEST - DARKEST) / Math.max(1, levels.length - 1));
        double[] placed = Spread.apart(levels, apart, DARKEST, LIGHTEST);
        Map<Colour, Integer> greys = new HashMap<>();
        for (int i = 0; i < placed.length; i++) {
            greys.put(darkestFirst.get(i), (int) Math.round(placed[i]));
        }
        return new Palette(
                Color.WHITE, Color.BLACK, new Color(0x555555), Color.BLACK, new Color(0xcccccc), false, greys);
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
    public Color yarn(Colour colour) {
        Color own = new Color(colour.rgb());
        if (coloured) {
            return own;
        }
        Integer level = greys.get(colour);
        return level == null ? grey(own) : new Color(level, level, level);
    }

    /** A grey as light as a colour, drawn together so that neither end drowns the lines in it. */
    public static Color grey(Color colour) {
        int level = (int) Math.round(70 + 175 * lightness(colour));
        return new Color(level, level, level);
    }

    /** How light a colour is: a share, from 0 for black to 1 for white. */
    public static double lightness(Color colour) {
        return (0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue()) / 255;
    }

    /** A colour much nearer to the paper, to write on. */
    public Color pale(Color colour) {
        return coloured ? mixed(colour, paper, 0.6) : mixed(faint, paper, 0.85);
    }

    /** A colour that lies this share of the way from one to another, from 0 to 1. */
    public static Color mixed(Color from, Color to, double share) {
        return new Color(
                channel(from.getRed(), to.getRed(), share),
                channel(from.getGreen(), to.getGreen(), share),
                channel(from.getBlue(), to.getBlue(), share));
    }

    private static int channel(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }
}

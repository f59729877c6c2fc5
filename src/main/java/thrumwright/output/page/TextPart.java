package thrumwright.output.page;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import thrumwright.measure.Unbroken;

/** Lines of text, broken between words; a number stays beside its unit. */
public record TextPart(String text, Font font, Color colour) implements Part {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final double LEADING = 1.28;
    private static final Pattern SPACES = Pattern.compile("\\s+");

    /** Sums of widths may be so far from the width of the whole, points; closer to the edge the whole is measured. */
    private static final double UNSURE = 0.05;

    /** How wide a text is without line breaks: points, 0 or more. */
    public static double width(String text, Font font) {
        return font.getStringBounds(text, EXACT).getWidth();
    }

    /** The same of a word or two that is asked for again and again, at any size: points, 0 or more. */
    public static double wordWidth(String word, Font font) {
        return TextsMeasured.word(word, font);
    }

    /** The text, cut short with “…” where it would be wider than so many points, 0 or more. */
    public static String shortened(String text, Font font, double width) {
        String shown = text;
        while (shown.length() > 1 && width(shown, font) > width) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        return shown;
    }

    @Override
    public double height(double width) {
        return lines(width).size() * font.getSize2D() * LEADING;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        // lines were broken by exact widths, so they must be painted by them
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setFont(font);
        g.setColor(colour);
        Structured.as(g, Role.TEXT, () -> {
            if (font.canDisplayUpTo(text) >= 0) {
                Structured.spell(g, text);
            }
            lines(g, x, y, width);
        });
    }

    private void lines(Graphics2D g, double x, double y, double width) {
        double baseline = y + font.getSize2D() * 0.98;
        List<String> lines = lines(width);
        for (int i = 0; i < lines.size(); i++) {
            // the space keeps the words apart for those who hear the lines as one
            String line = i < lines.size() - 1 ? lines.get(i) + " " : lines.get(i);
            g.drawString(Unbroken.plain(line), (float) x, (float) baseline);
            baseline += font.getSize2D() * LEADING;
        }
    }

    /** The lines in so many points of width, more than 0: words that fit a line together; a word too long for any line is divided. */
    public List<String> lines(double width) {
        return TextsMeasured.lines(text, font, width, () -> broken(width));
    }

    private List<String> broken(double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        double taken = 0;
        double space = TextsMeasured.word(" ", font);
        for (String word : SPACES.split(Unbroken.of(text).strip())) {
            String longer = line.isEmpty() ? word : line + " " + word;
            double more = (line.isEmpty() ? taken : taken + space) + TextsMeasured.word(word, font);
            boolean fits = fits(longer, more, width);
            if (!fits && !line.isEmpty()) {
                lines.add(line);
            }
            line = fits ? longer : divided(word, width, lines);
            taken = fits ? more : width(line, font);
        }
        lines.add(line);
        return lines;
    }

    private boolean fits(String line, double sum, double width) {
        return Math.abs(sum - width) > UNSURE ? sum < width : width(line, font) <= width;
    }

    /** What is left of a word after all lines that it fills alone. */
    private String divided(String word, double width, List<String> lines) {
        String rest = word;
        while (rest.length() > 1 && width(rest, font) > width) {
            int fits = fitting(rest, width);
            lines.add(rest.substring(0, fits));
            rest = rest.substring(fits);
        }
        return rest;
    }

    private int fitting(String word, double width) {
        int fits = 1;
        while (fits < word.length() && width(word.substring(0, fits + 1), font) <= width) {
            fits++;
        }
        return fits;
    }
}

package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/** Sentences in a frame, under a heading unless that is empty. */
public record NotePart(String heading, List<String> sentences, Type type, Palette palette) implements Part {
    private static final double PADDING = 9;

    /** As many frames as it takes for none to be wider or higher than so many points, above 0; the heading stands in the first. */
    public static List<Part> frames(
            String heading, List<String> sentences, Type type, Palette palette, double width, double most) {
        List<Part> frames = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= sentences.size(); i++) {
            String title = first == 0 ? heading : "";
            if (i == sentences.size()
                    || new NotePart(title, sentences.subList(first, i + 1), type, palette).height(width) > most) {
                frames.add(new NotePart(title, sentences.subList(first, i), type, palette));
                first = i;
            }
        }
        return frames;
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        if (!heading.isEmpty()) {
            parts.add(Structured.part(Role.CHAPTER, new TextPart(heading, type.strong(), palette.ink())));
        }
        sentences.forEach(
                sentence -> parts.add(Structured.item(new TextPart("• " + sentence, type.body(), palette.ink()))));
        return parts;
    }

    @Override
    public double height(double width) {
        return parts().stream()
                        .mapToDouble(part -> part.height(width - 2 * PADDING))
                        .sum()
                + 2 * PADDING;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1));
        g.draw(new RoundRectangle2D.Double(x, y, width, height(width), 8, 8));
        double at = y + PADDING;
        for (Part part : parts()) {
            part.paint(g, x + PADDING, at, width - 2 * PADDING);
            at += part.height(width - 2 * PADDING);
        }
    }
}

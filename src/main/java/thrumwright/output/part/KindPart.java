package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * How one kind of block is worked: its steps, its pictures, and below them what to do.
 *
 * @param heads the steps' numbers and titles
 * @param words what to do, and what to take care of
 */
public record KindPart(List<String> heads, KindPictures pictures, List<Part> words, PartMaker make) implements Part {
    private static final double GAP = 6;
    private static final double BETWEEN = 2;
    private static final double BESIDE = 12;

    private Part title() {
        return Structured.part(Role.STEP, make.heading(String.join(" · ", heads)));
    }

    private double wordsWidth(double width) {
        return pictures.slipsBeside() ? width - pictures.slipWidth(width) - BESIDE : width;
    }

    private double body(double width) {
        double wide = wordsWidth(width);
        double high =
                words.stream().mapToDouble(part -> part.height(wide) + BETWEEN).sum();
        return pictures.slipsBeside() ? Math.max(high, pictures.slipsHeight(pictures.slipWidth(width))) : high;
    }

    private double row(double width) {
        return pictures.none() ? 0 : pictures.height(width) + GAP;
    }

    @Override
    public double height(double width) {
        return 2.5 * GAP + title().height(width) + row(width) + body(width);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(make.palette().faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(x, y + GAP / 2, x + width, y + GAP / 2));
        double at = y + GAP;
        title().paint(g, x, at, width);
        at += title().height(width) + GAP / 2;
        pictures.paint(g, x, at, width);
        at += row(width);
        if (pictures.slipsBeside()) {
            pictures.paintSlips(g, x + wordsWidth(width) + BESIDE, at, pictures.slipWidth(width));
        }
        for (Part part : words) {
            part.paint(g, x, at, wordsWidth(width));
            at += part.height(wordsWidth(width)) + BETWEEN;
        }
    }
}

package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * How one kind of block is worked: its steps, its pictures at the left and what to do beside them.
 *
 * @param heads the steps' numbers and titles
 * @param words what to do, and what to take care of
 */
public record KindPart(List<String> heads, KindPictures pictures, List<Part> words, PartMaker make) implements Part {
    private static final double GAP = 6;
    private static final double BESIDE = 12;
    private static final double BETWEEN = 2;
    /** The widest pictures, and the narrowest, as shares of the width. */
    private static final double WIDEST = 0.5;

    private static final double NARROWEST = 0.3;
    private static final double STEP = 0.02;

    private double wordsHeight(double width) {
        return words.stream().mapToDouble(part -> part.height(width) + BETWEEN).sum();
    }

    /** As wide as lets all be lowest. */
    private double picturesWidth(double width) {
        double best = 0;
        double lowest = Double.MAX_VALUE;
        for (double share = WIDEST; share >= NARROWEST && !pictures.none(); share -= STEP) {
            double high = Math.max(pictures.height(share * width), wordsHeight(width - share * width - BESIDE));
            if (high < lowest) {
                lowest = high;
                best = share * width;
            }
        }
        return best;
    }

    private double wordsLeft(double width) {
        return pictures.none() ? 0 : picturesWidth(width) + BESIDE;
    }

    private Part title() {
        return Structured.part(Role.STEP, make.heading(String.join(" · ", heads)));
    }

    @Override
    public double height(double width) {
        double left = wordsLeft(width);
        double body = Math.max(wordsHeight(width - left), pictures.none() ? 0 : pictures.height(picturesWidth(width)));
        return 2.5 * GAP + title().height(width) + body;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(make.palette().faint());
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Line2D.Double(x, y + GAP / 2, x + width, y + GAP / 2));
        double at = y + GAP;
        title().paint(g, x, at, width);
        at += title().height(width) + GAP / 2;
        if (!pictures.none()) {
            pictures.paint(g, new Rectangle2D.Double(x, at, picturesWidth(width), 0));
        }
        double left = wordsLeft(width);
        for (Part part : words) {
            part.paint(g, x + left, at, width - left);
            at += part.height(width - left) + BETWEEN;
        }
    }
}

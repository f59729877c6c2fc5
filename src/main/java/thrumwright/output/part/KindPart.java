package thrumwright.output.part;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Optional;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/**
 * How one kind of block is worked: its steps, its pictures, and below them what to do.
 *
 * @param heads the steps' numbers and titles
 * @param words what to do; empty where that goes on in parts of its own
 */
public record KindPart(List<String> heads, KindPictures pictures, Optional<KindWords> words, PartMaker make)
        implements Part {
    private static final double GAP = 6;

    private Part title() {
        return Structured.part(Role.STEP, make.heading(String.join(" · ", heads)));
    }

    private double row(double width) {
        return pictures.none() ? 0 : pictures.height(width) + GAP;
    }

    @Override
    public double height(double width) {
        return 2.5 * GAP
                + title().height(width)
                + row(width)
                + words.map(all -> all.height(width)).orElse(0.0);
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
        double below = at + row(width);
        words.ifPresent(all -> all.paint(g, x, below, width));
    }
}

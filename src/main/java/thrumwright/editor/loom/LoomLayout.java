package thrumwright.editor.loom;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;

/**
 * Where what is seen at one time lies, from top to bottom: the step and its count, the picture, the row or the words, what is
 * beside them, and what comes next.
 *
 * @param pictured whether there is a picture; it takes all the room that the words leave
 */
record LoomLayout(Leaf leaf, LoomType type, boolean pictured, Dimension size) {
    /** The least share of the height that a picture takes. */
    private static final double PICTURE = 0.3;
    /** Room round all and between parts, as a share of the height of type. */
    private static final double GAP = 0.4;

    private double gap() {
        return GAP * type.words().getSize2D();
    }

    private double width() {
        return Math.max(1, size.width - 2 * gap());
    }

    private boolean countedBeside() {
        double both = Lines.width(leaf.title(), type.head()) + Lines.width(leaf.counted(), type.words());
        return !leaf.counted().isEmpty() && both + 2 * gap() <= width();
    }

    private Lines head() {
        Lines head = new Lines(width()).add(leaf.title(), type.head());
        return countedBeside() ? head : head.add(leaf.counted(), type.words());
    }

    /** As large as it fits into one line, but no smaller than all else. */
    private Lines row() {
        for (double larger = 1; larger > 0; larger -= 0.1) {
            if (Lines.width(leaf.row(), type.row(larger)) <= width()) {
                return new Lines(width()).add(leaf.row(), type.row(larger));
            }
        }
        return new Lines(width()).add(leaf.row(), type.row(0));
    }

    private Lines beside() {
        return new Lines(width()).add(leaf.told(), type.words()).add(leaf.beside(), type.words());
    }

    private Lines next() {
        return new Lines(width()).add(leaf.next(), type.small());
    }

    private double taken() {
        double sum = gap();
        for (Lines lines : new Lines[] {head(), row(), beside(), next()}) {
            sum += lines.count() == 0 ? 0 : lines.height() + gap();
        }
        return sum;
    }

    /** What the words leave for the picture, pixels; below 0 if they don't fit. */
    private double left() {
        return size.height - taken() - (pictured ? gap() : 0);
    }

    /** Whether all has room. */
    boolean fits() {
        return left() >= (pictured ? PICTURE * size.height : 0);
    }

    /** Where the picture is. */
    Rectangle2D picture() {
        double top = 2 * gap() + head().height();
        return new Rectangle2D.Double(gap(), top, width(), Math.max(0, left()));
    }

    /** Draws all but the picture. */
    void draw(Graphics2D g, Palette palette) {
        g.setColor(palette.ink());
        double y = gap();
        Lines head = head();
        head.draw(g, gap(), y);
        if (countedBeside()) {
            double wide = Lines.width(leaf.counted(), type.words());
            new Lines(wide + 1).add(leaf.counted(), type.words()).draw(g, size.width - gap() - wide, y);
        }
        y += head.height() + gap() + (pictured ? Math.max(0, left()) + gap() : 0);
        for (Lines lines : new Lines[] {row(), beside()}) {
            lines.draw(g, gap(), y);
            y += lines.count() == 0 ? 0 : lines.height() + gap();
        }
        next().draw(g, gap(), size.height - gap() - next().height());
    }
}

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
    private static final double PICTURE = 0.2;
    /** A row is only larger than it must be while a picture keeps this share of the height. */
    private static final double LARGE_PICTURE = 0.42;
    /** Room round all and between parts, as a share of the height of type. */
    private static final double GAP = 0.26;

    private double gap() {
        return GAP * type.words().getSize2D();
    }

    private double width() {
        return Math.max(1, size.width - 2 * gap());
    }

    private boolean countedBeside() {
        double both = LoomLines.width(leaf.title(), type.head()) + LoomLines.width(leaf.counted(), type.words());
        return !leaf.counted().isEmpty() && both + 2 * gap() <= width();
    }

    private LoomLines head() {
        LoomLines head = new LoomLines(width()).add(leaf.title(), type.head());
        return countedBeside() ? head : head.add(leaf.counted(), type.words());
    }

    /** As large as there is room for it in one line, but no smaller than all else. */
    private LoomLines row() {
        double room = left(new LoomLines(width())) - (pictured ? LARGE_PICTURE * size.height : 0) - gap();
        for (double larger = 1; larger > 0 && !leaf.row().isEmpty(); larger -= 0.1) {
            LoomLines row = new LoomLines(width()).add(leaf.row(), type.row(larger));
            if (row.count() == 1 && row.height() <= room) {
                return row;
            }
        }
        return new LoomLines(width()).add(leaf.row(), type.row(0));
    }

    private LoomLines beside() {
        return new LoomLines(width()).add(leaf.told(), type.words()).add(leaf.beside(), type.words());
    }

    private LoomLines next() {
        return new LoomLines(width()).add(leaf.next(), type.small());
    }

    /** What the words leave for the picture, pixels; below 0 if they don't fit. */
    private double left(LoomLines row) {
        double left = size.height - gap() * (pictured ? 2 : 1);
        for (LoomLines lines : new LoomLines[] {head(), row, beside(), next()}) {
            left -= lines.count() == 0 ? 0 : lines.height() + gap();
        }
        return left;
    }

    private double least() {
        return pictured ? PICTURE * size.height : 0;
    }

    /** Whether all has room. */
    boolean fits() {
        return left(row()) >= least();
    }

    /** The same without its picture, where the words need all the room. */
    LoomLayout fitted() {
        return fits() ? this : new LoomLayout(leaf, type, false, size);
    }

    /** Where the picture is. */
    Rectangle2D picture() {
        double top = 2 * gap() + head().height();
        return new Rectangle2D.Double(gap(), top, width(), Math.max(0, left(row())));
    }

    /** Draws all but the picture. */
    void draw(Graphics2D g, Palette palette) {
        g.setColor(palette.ink());
        double y = gap();
        LoomLines head = head();
        head.draw(g, gap(), y);
        if (countedBeside()) {
            double wide = LoomLines.width(leaf.counted(), type.words());
            new LoomLines(wide + 1).add(leaf.counted(), type.words()).draw(g, size.width - gap() - wide, y);
        }
        y += head.height() + gap() + (pictured ? Math.max(0, left(row())) + gap() : 0);
        for (LoomLines lines : new LoomLines[] {row(), beside()}) {
            lines.draw(g, gap(), y);
            y += lines.count() == 0 ? 0 : lines.height() + gap();
        }
        next().draw(g, gap(), size.height - gap() - next().height());
    }
}

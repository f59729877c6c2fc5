package thrumwright.output.page;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/**
 * A canvas that keeps what is painted on it, for those who hear a page instead of seeing it. What is painted without a
 * role is an ornament; a role within a text or a figure adds nothing to it.
 */
public interface Structured {
    /** Paints something that has this role. */
    void as(Role role, Runnable paint);

    /**
     * Paints a figure.
     *
     * @param alternative what it shows, in words
     * @param box where it lies, points
     */
    void figure(String alternative, Rectangle2D box, Runnable paint);

    /** Tells the words of the text that is being painted, where its letters alone would not tell them. */
    void spell(String text);

    /** Paints something; where the canvas keeps roles, it keeps this one. */
    static void as(Graphics2D g, Role role, Runnable paint) {
        if (g instanceof Structured structured) {
            structured.as(role, paint);
        } else {
            paint.run();
        }
    }

    /** Tells the words of the text that is being painted; a canvas that keeps roles keeps them. */
    static void spell(Graphics2D g, String text) {
        if (g instanceof Structured structured) {
            structured.spell(text);
        }
    }

    /** Paints a figure; where the canvas keeps roles, it keeps the words for it too. */
    static void figure(Graphics2D g, String alternative, Rectangle2D box, Runnable paint) {
        if (g instanceof Structured structured) {
            structured.figure(alternative, box, paint);
        } else {
            paint.run();
        }
    }

    /** Paints a row of a table. */
    static void row(Graphics2D g, Runnable cells) {
        as(g, Role.TABLE, () -> as(g, Role.ROW, cells));
    }

    /** A part that has this role. */
    static Part part(Role role, Part part) {
        return new WithRole(role, part);
    }

    /** A part that is an item of a list. */
    static Part item(Part part) {
        return part(Role.LIST, part(Role.ITEM, part(Role.ENTRY, part)));
    }

    /** A part that is a figure. */
    static Part figure(String alternative, Part part) {
        return new Figure(alternative, part);
    }

    /** A part and what it is. */
    record WithRole(Role role, Part part) implements Part {
        @Override
        public double height(double width) {
            return part.height(width);
        }

        @Override
        public void paint(Graphics2D g, double x, double y, double width) {
            as(g, role, () -> part.paint(g, x, y, width));
        }
    }

    /** A drawing and the words for it. */
    record Figure(String alternative, Part part) implements Part {
        @Override
        public double height(double width) {
            return part.height(width);
        }

        @Override
        public void paint(Graphics2D g, double x, double y, double width) {
            Rectangle2D box = new Rectangle2D.Double(x, y, width, part.height(width));
            figure(g, alternative, box, () -> part.paint(g, x, y, width));
        }
    }
}

package thrumwright.drawing.piece;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import thrumwright.drawing.Palette;
import thrumwright.drawing.Pictured;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Place;
import thrumwright.plan.Lining;
import thrumwright.plan.MountingBoard;
import thrumwright.plan.Plan;
import thrumwright.sheet.Sewn;

/**
 * A finished piece as a whole, with what is sewn to it or it to: a cord along its edges, a lining at its back, a board behind it. All in
 * one scale, but for the stitches.
 *
 * @param caption to stand below it; those who hear it hear the same
 */
public record SewnPicture(Plan plan, Sewn sewn, String caption) implements Pictured {
    /** Room round it, a share of the box. */
    private static final double ROOM = 0.08;

    /** From stitch to stitch, page units. */
    private static final double STITCH = 6;

    private static final double STITCH_LONG = 2.6;

    @Override
    public String says() {
        return caption;
    }

    @Override
    public void paint(Graphics2D g, Palette palette, Font font, Rectangle2D box) {
        double board = plan.board().map(one -> Math.max(0, one.border())).orElse(0.0);
        double cord = plan.piece().destiny().cord().map(one -> one.thick().mm()).orElse(0.0);
        double beyond = sewn == Sewn.BOARD ? board : cord;
        double wide = plan.finishedWidth() + 2 * beyond;
        double high = plan.finishedHeight() + 2 * beyond;
        double scale = Math.min(box.getWidth() * (1 - 2 * ROOM) / wide, box.getHeight() * (1 - 2 * ROOM) / high);
        double width = plan.finishedWidth() * scale;
        double height = plan.finishedHeight() * scale;
        Rectangle2D piece =
                new Rectangle2D.Double(box.getCenterX() - width / 2, box.getCenterY() - height / 2, width, height);
        new Drawing(g, palette, piece, scale).paint();
    }

    /** @param scale page units to a mm */
    private final class Drawing {
        private final Graphics2D g;
        private final Palette palette;
        private final Rectangle2D piece;
        private final double scale;

        Drawing(Graphics2D g, Palette palette, Rectangle2D piece, double scale) {
            this.g = g;
            this.palette = palette;
            this.piece = piece;
            this.scale = scale;
        }

        void paint() {
            switch (sewn) {
                case CORD -> {
                    front();
                    plan.piece().destiny().cord().ifPresent(this::cord);
                }
                case LINING -> plan.lining().ifPresent(this::lining);
                case BOARD -> plan.board().ifPresent(this::board);
            }
        }

        /** The first stripe below, the last above. */
        private void front() {
            double half = piece.getHeight() / 2;
            fill(new Rectangle2D.Double(piece.getX(), piece.getY(), piece.getWidth(), half), stripe(Place.TOP));
            fill(
                    new Rectangle2D.Double(piece.getX(), piece.getY() + half, piece.getWidth(), half),
                    stripe(Place.START));
            outline(piece);
        }

        private Color stripe(Place place) {
            return palette.yarn(plan.piece().stripe(place).colour());
        }

        private void fill(Rectangle2D area, Color colour) {
            g.setColor(colour);
            g.fill(area);
        }

        private void outline(Rectangle2D area) {
            g.setColor(palette.ink());
            g.setStroke(new BasicStroke(0.6f));
            g.draw(area);
        }

        private void board(MountingBoard board) {
            Rectangle2D area = grown((board.width() - plan.finishedWidth()) / 2 * scale);
            if (!board.hides()) {
                fill(area, Palette.mixed(palette.faint(), palette.paper(), 0.75));
                outline(area);
            }
            front();
            if (board.hides()) {
                dashed(area.getMinX(), area.getMinY(), area.getMaxX(), area.getMinY());
                dashed(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY());
                dashed(area.getMinX(), area.getMinY(), area.getMinX(), area.getMaxY());
                dashed(area.getMaxX(), area.getMinY(), area.getMaxX(), area.getMaxY());
            }
            stitches(piece, true);
        }

        private Rectangle2D grown(double by) {
            return new Rectangle2D.Double(
                    piece.getX() - by, piece.getY() - by, piece.getWidth() + 2 * by, piece.getHeight() + 2 * by);
        }

        private void lining(Lining lining) {
            fill(piece, Palette.mixed(stripe(Place.START), palette.paper(), 0.55));
            outline(piece);
            Rectangle2D area = new Rectangle2D.Double(
                    piece.getX() + lining.margin() * scale,
                    piece.getY() + lining.below() * scale,
                    lining.width() * scale,
                    lining.height() * scale);
            fill(area, palette.paper());
            g.setColor(palette.ink());
            g.setStroke(new BasicStroke(0.6f));
            g.draw(new Line2D.Double(area.getMinX(), area.getMinY(), area.getMaxX(), area.getMinY()));
            g.draw(new Line2D.Double(area.getMinX(), area.getMinY(), area.getMinX(), area.getMaxY()));
            g.draw(new Line2D.Double(area.getMaxX(), area.getMinY(), area.getMaxX(), area.getMaxY()));
            dashed(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY());
            stitches(area, false);
        }

        /** Short lines across the edges: over the top and both sides, and below if it is sewn there. */
        private void stitches(Rectangle2D area, boolean below) {
            g.setColor(palette.ink());
            g.setStroke(new BasicStroke(0.9f));
            for (double x = area.getMinX() + STITCH; x < area.getMaxX() - STITCH / 2; x += STITCH) {
                across(x, area.getMinY(), 0, 1);
                if (below) {
                    across(x, area.getMaxY(), 0, 1);
                }
            }
            for (double y = area.getMinY() + STITCH; y < area.getMaxY() - STITCH / 2; y += STITCH) {
                across(area.getMinX(), y, 1, 0);
                across(area.getMaxX(), y, 1, 0);
            }
        }

        private void across(double x, double y, int right, int down) {
            double half = STITCH_LONG / 2;
            g.draw(new Line2D.Double(x - right * half, y - down * half, x + right * half, y + down * half));
        }

        private void dashed(double x, double y, double toX, double toY) {
            g.setColor(palette.ink());
            g.setStroke(new BasicStroke(0.6f));
            double far = Math.hypot(toX - x, toY - y);
            int count = Math.max(1, (int) (far / 5));
            for (int i = 0; i < count; i++) {
                double from = (i + 0.2) / count;
                double to = (i + 0.75) / count;
                g.draw(new Line2D.Double(
                        x + from * (toX - x), y + from * (toY - y), x + to * (toX - x), y + to * (toY - y)));
            }
        }

        private void cord(EdgeCord cord) {
            double thick = Math.max(3, cord.thick().mm() * scale);
            Rectangle2D area = grown(thick / 2);
            if (cord.along() != EdgeCord.Along.SIDES) {
                twisted(area.getMinX(), area.getMinY(), area.getMaxX(), area.getMinY(), thick);
                twisted(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY(), thick);
            }
            if (cord.along() != EdgeCord.Along.ENDS) {
                twisted(area.getMinX(), area.getMinY(), area.getMinX(), area.getMaxY(), thick);
                twisted(area.getMaxX(), area.getMinY(), area.getMaxX(), area.getMaxY(), thick);
            }
        }

        /** A cord from the front: its strands slant across it. */
        private void twisted(double x, double y, double toX, double toY, double thick) {
            Color colour = stripe(Place.START);
            boolean level = y == toY;
            g.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(Palette.mixed(colour, Color.BLACK, 0.5));
            g.draw(new Line2D.Double(x, y, toX, toY));
            g.setStroke(new BasicStroke((float) (thick - 0.8), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(Palette.mixed(colour, Color.WHITE, 0.25));
            g.draw(new Line2D.Double(x, y, toX, toY));
            g.setStroke(new BasicStroke(0.7f));
            g.setColor(Palette.mixed(colour, Color.BLACK, 0.5));
            double far = Math.hypot(toX - x, toY - y);
            double half = thick / 2 - 0.3;
            for (double at = thick; at < far - half; at += 1.1 * thick) {
                double middleX = x + at / far * (toX - x);
                double middleY = y + at / far * (toY - y);
                g.draw(
                        level
                                ? new Line2D.Double(middleX - half, middleY + half, middleX + half, middleY - half)
                                : new Line2D.Double(middleX - half, middleY - half, middleX + half, middleY + half));
            }
        }
    }
}

package thrumwright.drawing.step;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.drawing.Palette;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPath;

/** A move as lines, one on top of the other, for whoever draws and moves them by other means. */
public record MoveLines(Move move, Palette palette) {
    /** How much darker yarn is behind the warp. */
    private static final double SHADE = 0.32;
    /** Warp and posts go on above the rows so far, in distances between ends. */
    private static final double ABOVE = 1.6;

    private static final double BELOW = 1.9;

    /**
     * A line of one thickness.
     *
     * @param x mm from the first warp end
     * @param y mm above the lowest row
     * @param width mm, more than 0
     * @param from the share of the move's yarn that is laid in where it begins; −1 for what is there all the time
     * @param to the share where it ends
     */
    public record Line(double[] x, double[] y, double width, Color colour, double from, double to) {}

    /** All of them, those that lie on top last. */
    public List<Line> all() {
        List<Line> lines = new ArrayList<>();
        move.ground().forEach(ground -> still(ground, false, lines));
        laid(false, lines);
        posts(lines);
        warp(lines);
        move.ground().forEach(ground -> still(ground, true, lines));
        laid(true, lines);
        tied(lines);
        return lines;
    }

    /** All that they may take up: mm across and upwards. */
    public Rectangle2D bounds() {
        double left = move.whole().reach(Side.LEFT) + 0.3 * setting().spacing();
        double right = move.whole().reach(Side.RIGHT) + 0.3 * setting().spacing();
        double high = move.whole().height() + (BELOW + ABOVE) * setting().spacing();
        return new Rectangle2D.Double(
                -left, -BELOW * setting().spacing(), setting().span() + left + right, high);
    }

    private Setting setting() {
        return move.whole().setting();
    }

    private BlockPicture picture() {
        return move.whole().picture();
    }

    private Color shade(Color colour, boolean front) {
        return front ? colour : Palette.mixed(colour, Color.BLACK, SHADE);
    }

    private void still(ClothPainter.PlacedBlock ground, boolean front, List<Line> lines) {
        BlockPicture woven = ground.picture();
        Color colour = shade(woven.colour(palette), front);
        List<Stretch> stretches = front ? woven.front(Detail.FINE) : woven.back(Detail.FINE);
        stretches.forEach(stretch -> lines.add(line(stretch, ground.bottom(), colour, -1, -1)));
    }

    private void laid(boolean front, List<Line> lines) {
        Color colour = shade(picture().colour(palette), front);
        picture().path(Detail.FINE).strands().stream()
                .flatMap(List::stream)
                .filter(reached -> reached.stretch().front() == front)
                .sorted(Comparator.comparingDouble(
                        (YarnPath.Reached reached) -> reached.stretch().order()))
                .forEach(reached -> lines.add(line(reached.stretch(), 0, colour, reached.from(), reached.to())));
        move.whole().tails().stream()
                .filter(tail -> tail.inFront() == front)
                .forEach(tail -> lines.add(line(tail.stretch(setting()), 0, colour, begins(tail.y()) ? -1 : 1, 1)));
    }

    /** Where one yarn begins, it hangs all the time; where it ends, and where a folded one does, only then. */
    private boolean begins(double y) {
        return picture().laid(0.5).tails(0).stream().anyMatch(tail -> tail.y() == y);
    }

    private void posts(List<Line> lines) {
        setting().posts().ifPresent(posts -> {
            upright(-beside(posts), posts.diameter(), palette.post(), lines);
            upright(setting().span() + beside(posts), posts.diameter(), palette.post(), lines);
        });
    }

    private double beside(Posts posts) {
        return posts.gap() + setting().warp() / 2 + posts.diameter() / 2;
    }

    private void warp(List<Line> lines) {
        Color colour = palette.yarn(move.warp().colour());
        for (int end = 0; end < setting().ends(); end++) {
            upright(end * setting().spacing(), setting().warp(), colour, lines);
        }
    }

    private void upright(double x, double width, Color colour, List<Line> lines) {
        Rectangle2D all = bounds();
        lines.add(new Line(
                new double[] {x, x},
                new double[] {all.getMinY() - width, all.getMaxY() + width},
                width,
                colour,
                -1,
                -1));
    }

    private void tied(List<Line> lines) {
        Color colour = picture().colour(palette);
        List<Stretch> ties = picture().ties();
        for (int i = 0; i < ties.size(); i++) {
            lines.add(line(ties.get(i), 0, colour, i < ties.size() / 2 ? -1 : 1, 1));
        }
    }

    private static Line line(Stretch stretch, double up, Color colour, double from, double to) {
        double[] y = Arrays.stream(stretch.y()).map(each -> each + up).toArray();
        double width = Arrays.stream(stretch.width()).average().orElseThrow();
        return new Line(stretch.x(), y, width, colour, from, to);
    }
}

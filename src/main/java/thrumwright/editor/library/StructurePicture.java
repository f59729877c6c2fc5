package thrumwright.editor.library;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.look.HeardPicture;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Smooth;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.StructureFit;

/** A structure on a narrow stretch of the piece's warp, by the painters of the canvas. */
public final class StructurePicture extends HeardPicture {
    private static final long serialVersionUID = 1L;

    /** So many warp ends show the structure; a wider piece would make it tiny. */
    private static final int ENDS = 28;

    private static final double BARE = 5;
    private static final double MOST_SCALE = 7;
    /** Beyond the warp so much is shown, mm: enough to see that a cord leads to the posts. */
    private static final double BESIDE = 36;

    private final transient Palette palette;
    private transient Optional<EndShown> shown = Optional.empty();

    /** An end of a piece. */
    private record EndShown(PiecePicture picture, Place place) {}

    public StructurePicture(Palette palette) {
        this.palette = palette;
        setName("structurePicture");
        setPreferredSize(Pixels.of(new Dimension(360, 240)));
        setMinimumSize(Pixels.of(new Dimension(200, 120)));
    }

    /** @param said what the picture shows, in words */
    public void show(StructureFit fit, String said) {
        shown = Optional.of(new EndShown(PiecePicture.of(narrow(fit)), fit.place()));
        getAccessibleContext().setAccessibleDescription(said);
        repaint();
    }

    void showNothing() {
        shown = Optional.empty();
        getAccessibleContext().setAccessibleDescription("");
        repaint();
    }

    private static Plan narrow(StructureFit fit) {
        Piece piece = fit.plan().piece();
        if (piece.warp().ends() <= ENDS) {
            return fit.plan();
        }
        Warp warp = piece.warp();
        double width = ENDS * warp.sett().spacing();
        Warp narrow = new Warp(Length.of(width, Unit.MILLIMETRE), warp.sett(), warp.yarnId());
        return Plan.of(piece.withWarp(narrow));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(palette.paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        Smooth.lines(g);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        shown.ifPresent(end -> paint(g, end.picture(), end.place()));
        g.dispose();
    }

    private void paint(Graphics2D g, PiecePicture shown, Place place) {
        double stripe = PiecePainter.stripeHeight(shown, place);
        double tails = shown.hanging(place) + 1;
        double bare = Math.max(BARE, shown.loops(place) + 1);
        double below = place == Place.START ? Math.max(bare, tails) : Math.max(stripe, tails);
        double above = place == Place.START ? stripe : bare;
        double high = below + shown.plan().end(place).height() + above;
        double wide = shown.span() + 2 * Math.min(BESIDE, shown.margin());
        double scale = Math.min(MOST_SCALE, Math.min((getWidth() - 12) / wide, (getHeight() - 12) / high));
        double left = (getWidth() - scale * shown.span()) / 2;
        double base = (getHeight() + scale * high) / 2 - scale * below;
        new PiecePainter(g, palette, false).end(new View(scale, left, base), shown, place, bare);
    }
}

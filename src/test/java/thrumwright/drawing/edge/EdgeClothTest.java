package thrumwright.drawing.edge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.drawing.Palette;
import thrumwright.drawing.PictureLabels;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.measure.Length;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

/** What is seen where warp ends are finished. */
class EdgeClothTest {
    private static final WarpFinish FRINGE =
            new WarpFinish(Tag.of("fringe"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm"));

    private static Plan fringed(boolean countered) {
        Twining twining = new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, countered);
        Piece piece = Pieces.panel().withStart(new End(List.of(FRINGE, twining)));
        return Plan.of(piece.withTop(new Top.FollowsStart(Set.of())));
    }

    private static List<ClothPainter.PlacedBlock> cloth(Plan plan, Place place) {
        return new EdgeCloth(plan, plan.end(place), 6, 20, 60).blocks();
    }

    /** The twining lies at the very edge, and the design's picks on it. */
    @Test
    void whatHoldsAFringeIsInItsPicture() {
        List<ClothPainter.PlacedBlock> blocks = cloth(fringed(false), Place.START);

        assertThat(blocks).hasSize(2);
        assertThat(blocks.get(0).bottom()).isZero();
        assertThat(blocks.get(0).height())
                .isCloseTo(2 * blocks.get(0).picture().setting().beaten(), within(1e-9));
        assertThat(blocks.get(1).bottom()).isCloseTo(blocks.get(0).height(), within(1e-9));
    }

    /** The top is painted as the start and turned over: its stitches are led so that they lean right after that. */
    @Test
    void atTheTopItsStitchesLeanAsTheyDo() {
        double start = lean(cloth(fringed(false), Place.START));
        double top = lean(cloth(fringed(false), Place.TOP));

        // one row of Z at the start is one of S at the top; turned over, both are led alike
        assertThat(Math.signum(start)).isEqualTo(1);
        assertThat(Math.signum(top)).isEqualTo(1);
    }

    /** How the first stitches in front lean: up to the right if more than 0. */
    private static double lean(List<ClothPainter.PlacedBlock> blocks) {
        return blocks.get(0).picture().front(Detail.FINE).stream()
                .filter(stretch -> stretch.highX() - stretch.lowX() > 15)
                .mapToDouble(EdgeClothTest::rise)
                .sum();
    }

    private static double rise(Stretch stretch) {
        int last = stretch.x().length - 1;
        return (stretch.y()[last] - stretch.y()[0]) * Math.signum(stretch.x()[last] - stretch.x()[0]);
    }

    /** On the loom a closed warp is bare when its first step is read. */
    @Test
    void loopsAtTheStartHangOnABareWarp() {
        WarpLoops loops = new WarpLoops(Tag.of("loops"), WarpLoops.Held.ROD, Length.parse("4 mm"));
        Plan plan = Plan.of(Pieces.panel().withStart(new End(List.of(loops))));

        assertThat(weft(plan, loops, EdgeView.WHOLE)).isZero();
        assertThat(weft(plan, loops, 0)).isZero();
        assertThat(weft(plan, loops, 1)).isPositive();
    }

    /** How many pixels show the design's yarn. */
    private static int weft(Plan plan, EdgeFinish finish, int stage) {
        BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 300, 200);
        EdgeView eye = new EdgeView(g, Palette.onPaper(), null, PictureLabels.here(), false, stage);
        new EdgePainter(eye).paint(new Rectangle(0, 0, 300, 200), plan, plan.start(), finish);
        g.dispose();
        Color yarn = new Color(plan.piece().stripe(Place.START).colour().rgb());
        float[] hue = Color.RGBtoHSB(yarn.getRed(), yarn.getGreen(), yarn.getBlue(), null);
        int seen = 0;
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 200; y++) {
                Color at = new Color(image.getRGB(x, y));
                float[] own = Color.RGBtoHSB(at.getRed(), at.getGreen(), at.getBlue(), null);
                seen += own[1] > 0.35 && Math.abs(own[0] - hue[0]) < 0.04 ? 1 : 0;
            }
        }
        return seen;
    }
}

package thrumwright.drawing.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

class SlipTest {
    private static final Rectangle BOX = new Rectangle(20, 20, 240, 160);

    private final Piece panel = Pieces.panel();

    /** The panel with one block of every kind, and the same without posts. */
    private List<Plan> plans() {
        Loom loom = panel.loom();
        Piece withoutPosts = panel.withLoom(loom.withUprights(Optional.empty()));
        End all = new End(NewBlocks.all(UnitSystem.METRIC));
        return List.of(Plan.of(panel.withStart(all)), Plan.of(withoutPosts.withStart(all)));
    }

    private static BufferedImage picture(Plan plan, EndPlan end, BlockPlan block, Slip slip, boolean right) {
        BufferedImage image = new BufferedImage(280, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        new StepPainter(g, Palette.onPaper(), Fonts.load().regular().deriveFont(9f))
                .slip(BOX, plan, end, block, slip, right);
        g.dispose();
        return image;
    }

    /** What is right and what is wrong can be told apart, at either end, and keep to their boxes. */
    @Test
    void everySlipShows() {
        Map<Slip, Double> differing = new EnumMap<>(Slip.class);
        for (Plan plan : plans()) {
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    Slip.of(block).ifPresent(slip -> {
                        BufferedImage right = picture(plan, end, block, slip, true);
                        BufferedImage wrong = picture(plan, end, block, slip, false);
                        assertThat(outside(right) + outside(wrong)).isZero();
                        differing.merge(slip, differing(right, wrong), Math::min);
                    });
                }
            }
        }
        assertThat(differing.keySet()).isEqualTo(EnumSet.allOf(Slip.class));
        assertThat(differing)
                .allSatisfy((slip, share) -> assertThat(share).as(slip.name()).isGreaterThan(0.008));
    }

    /** Share of the box whose colour is clearly another. */
    private static double differing(BufferedImage one, BufferedImage other) {
        int differing = 0;
        for (int y = BOX.y; y < BOX.y + BOX.height; y++) {
            for (int x = BOX.x; x < BOX.x + BOX.width; x++) {
                int green = (one.getRGB(x, y) >> 8 & 0xff) - (other.getRGB(x, y) >> 8 & 0xff);
                differing += Math.abs(green) > 60 ? 1 : 0;
            }
        }
        return (double) differing / (BOX.width * BOX.height);
    }

    private static int outside(BufferedImage image) {
        int outside = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                boolean within = x >= BOX.x - 1 && x <= BOX.x + BOX.width && y >= BOX.y - 1 && y <= BOX.y + BOX.height;
                outside += within || (image.getRGB(x, y) & 0xffffff) == 0xffffff ? 0 : 1;
            }
        }
        return outside;
    }

    /** Nobody wants to see one twice, but a lean turns over at the top, and finishes are worked one end after the other. */
    @Test
    void eachIsShownWhereItIsFirstNeeded() {
        Piece piece = panel.withTop(new Top.FollowsStart(Set.of()));
        Plan plan = Plan.of(piece);
        assertThat(shown(plan, plan.start())).containsExactly("ordering", "waste", "twining", "stiff", "soumak");
        assertThat(shown(plan, plan.top())).containsExactly("soumak", "twining");

        Block tassels = NewBlocks.ofKind("wrapped-tassels", UnitSystem.METRIC);
        Plan tasselled = Plan.of(piece.withStart(piece.start().with(2, tassels)));
        assertThat(shown(tasselled, tasselled.start())).contains("tassels");
        assertThat(shown(tasselled, tasselled.top())).contains("tassels");
        assertThat(tasselled.top().place()).isEqualTo(Place.TOP);
    }

    private static List<String> shown(Plan plan, EndPlan end) {
        List<String> shown = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            Slip.toShow(plan, end, block)
                    .ifPresent(slip -> shown.add(block.block().id()));
        }
        return shown;
    }
}

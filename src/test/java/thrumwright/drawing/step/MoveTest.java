package thrumwright.drawing.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.block.Row;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class MoveTest {
    private static final Rectangle2D BOX = new Rectangle2D.Double(20, 20, 300, 200);

    private static double length(BlockPicture picture) {
        return Stream.of(picture.front(Detail.FINE), picture.back(Detail.FINE))
                .flatMap(List::stream)
                .mapToDouble(Stretch::length)
                .sum();
    }

    private interface Check {
        void of(Move move, BlockPlan block);
    }

    private static void everyMove(Check check) {
        RandomPieces pieces = new RandomPieces(3_141);
        for (int i = 0; i < Seeds.of(200); i++) {
            Plan plan = Plan.of(pieces.next());
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    Move.of(plan, end, block).ifPresent(move -> check.of(move, block));
                }
            }
        }
    }

    @Test
    void soMuchYarnIsLaidInAsIsAskedForAndInTheEndAllOfIt() {
        everyMove((move, block) -> {
            BlockPicture picture = move.whole().picture();
            double whole = length(picture);
            for (double share : new double[] {0.07, 0.33, 0.5, 0.918, 1}) {
                assertThat(length(picture.laid(share)))
                        .as("%s, %s", block.block(), share)
                        .isCloseTo(share * whole, within(0.03 * whole / move.rows()));
            }
            assertThat(picture.laid(1).front(Detail.FINE)).isEqualTo(picture.front(Detail.FINE));
            assertThat(picture.laid(1).tails(0)).isEqualTo(picture.tails(0));
        });
    }

    @Test
    void aRowOfTheBlockIsShownByOneThatIsWorkedLikeIt() {
        everyMove((move, block) -> {
            List<Row> rows = block.work().orElseThrow().rows();
            for (Row row : rows) {
                Row shown = move.whole().work().rows().get(move.shows(row.number() - 1));
                assertThat(shown.from()).isEqualTo(row.from());
                assertThat(shown.shed()).isEqualTo(row.shed());
                assertThat(shown.lean()).isEqualTo(row.lean());
            }
            assertThat(move.shows(rows.size() - 1)).isEqualTo(move.rows() - 1);
        });
    }

    @Test
    void rowsFollowEachOtherAndCrossingsGoOn() {
        everyMove((move, block) -> {
            for (int row = 0; row < move.rows(); row++) {
                List<Double> crossings = move.crossings(row);
                assertThat(crossings).isSorted().doesNotHaveDuplicates().endsWith(1.0);
                assertThat(crossings.get(0)).isPositive();
                assertThat(move.whole().picture().share(row))
                        .isLessThan(move.whole().picture().share(row + 1));
            }
            assertThat(move.whole().picture().share(move.rows())).isEqualTo(1);
        });
    }

    /** Every row paints something new, and nothing outside the box. */
    @Test
    void theYarnIsSeenToGoInAndStaysInItsBox() {
        Plan plan = Plan.of(Pieces.panel());
        for (BlockPlan block : plan.start().blocks()) {
            Move.of(plan, plan.start(), block).ifPresent(move -> {
                for (int row = 0; row < move.rows(); row++) {
                    BufferedImage before = painted(move, row, 0.2);
                    BufferedImage after = painted(move, row, 0.8);
                    assertThat(different(before, after))
                            .as("%s row %s", block.block(), row)
                            .isGreaterThan(200);
                }
            });
        }
    }

    private static BufferedImage painted(Move move, int row, double share) {
        BufferedImage image = new BufferedImage(340, 240, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 340, 240);
        move.paint(g, Palette.onPaper(), Fonts.load().regular().deriveFont(8f), BOX, row, share);
        g.dispose();
        for (int x = 0; x < 340; x++) {
            assertThat(image.getRGB(x, 10)).isEqualTo(Color.WHITE.getRGB());
            assertThat(image.getRGB(x, 230)).isEqualTo(Color.WHITE.getRGB());
        }
        return image;
    }

    private static int different(BufferedImage one, BufferedImage other) {
        int count = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                count += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
            }
        }
        return count;
    }
}

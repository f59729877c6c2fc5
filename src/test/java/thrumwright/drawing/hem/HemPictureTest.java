package thrumwright.drawing.hem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Support;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.testing.SeeingGraphics;
import thrumwright.testing.SeeingGraphics.Seen;

class HemPictureTest {
    private static final Rectangle2D BOX = new Rectangle2D.Double(0, 0, 430, 260);

    private static Hem hem(double cloth, double thick, Optional<Double> firstTurn, Support support) {
        return new Hem(
                "fold",
                40,
                cloth,
                thick,
                firstTurn,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Hem.Sleeve(support, 0)));
    }

    /** The cloth keeps its length, touches the bar nowhere more than it lies on it, and the front hangs straight. */
    private static void runsRound(Hem hem, double wide, double high) {
        SleeveLine line = SleeveLine.of(hem).orElseThrow();
        double t = hem.thickness();
        double length = 0;
        double[] before = line.at(0);
        Point2D bar = line.bar();
        for (double u = 0.05; u < hem.cloth() + 2 * hem.depth(); u += 0.05) {
            double[] at = line.at(u);
            length += Math.hypot(at[0] - before[0], at[1] - before[1]);
            double outX = Math.max(0, Math.abs(at[0] - bar.getX()) - wide / 2);
            double outY = Math.max(0, Math.abs(at[1] - bar.getY()) - high / 2);
            boolean round = wide == high;
            double clear =
                    round ? Math.hypot(at[0] - bar.getX(), at[1] - bar.getY()) - wide / 2 : Math.hypot(outX, outY);
            assertThat(clear).as("beside the bar at " + u).isGreaterThan(t / 2 - (round ? 0.05 : 0.3 * wide));
            before = at;
        }
        assertThat(length).isCloseTo(hem.cloth() + 2 * hem.depth(), within(0.2));
        double[] fold = line.at(hem.cloth());
        assertThat(fold[1]).as("the fold is the lowest").isCloseTo(0, within(0.02));
        assertThat(line.at(hem.cloth() + hem.depth() + Math.PI * high)[0]).isCloseTo(0, within(1e-6));
        assertThat(line.depth()).isLessThan(hem.depth()).isGreaterThan(high + t);
    }

    @Test
    void theClothRunsRoundItsBar() {
        runsRound(hem(40, 4, Optional.empty(), new Support.RoundBar(Length.parse("12 mm"))), 12, 12);
        runsRound(hem(30, 1.5, Optional.empty(), new Support.RoundBar(Length.parse("6 mm"))), 6, 6);
        runsRound(hem(60, 3, Optional.empty(), new Support.Slat(Length.parse("30 mm"), Length.parse("5 mm"))), 5, 30);
    }

    /** The tangent from the seam and the arc to the fold, had from the depth, make up the length of the cloth. */
    @Test
    void isAsDeepAsTheBarLeaves() {
        double t = 2;
        double r = 5 + t / 2;
        SleeveLine line = SleeveLine.of(hem(40, t, Optional.empty(), new Support.RoundBar(Length.parse("10 mm"))))
                .orElseThrow();
        double up = line.depth() - t / 2 - r;
        double across = r - t;
        double tangent = Math.sqrt(up * up + across * across - r * r);
        double arc = r * (3 * Math.PI / 2 - (Math.atan2(up, across) + Math.acos(r / Math.hypot(up, across))));
        assertThat(tangent + arc).isCloseTo(40, within(0.05));
    }

    @Test
    void aBarWithoutRoomIsNotInTheHem() {
        assertThat(SleeveLine.of(hem(15, 4, Optional.empty(), new Support.RoundBar(Length.parse("20 mm")))))
                .isEmpty();
        assertThat(SleeveLine.of(hem(40, 4, Optional.empty(), new Support.Strip(Length.parse("20 mm")))))
                .isEmpty();
    }

    @Test
    void nothingWrittenLiesOverTheHemOrOverAnother() {
        RandomPieces pieces = new RandomPieces(77);
        Words words = new Words(Locale.UK);
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
        int met = 0;
        int count = Seeds.of(150, 60);
        for (int i = 0; i < count; i++) {
            Piece piece = pieces.next();
            Plan plan = Plan.of(piece);
            for (Place place : Place.values()) {
                EndPlan end = plan.end(place);
                Optional<Hem> hem = end.hem().filter(Hem::folds).filter(HemPictureTest::turnedInHasRoom);
                if (hem.isPresent()) {
                    met++;
                    FontRenderContext context = new FontRenderContext(null, true, false);
                    HemPicture picture = new HemPicture(plan, end, hem.get(), font, context, words::name);
                    check(picture);
                }
            }
        }
        assertThat(met).isGreaterThan(count / 10);
    }

    /** Else it would run against the fold. */
    private static boolean turnedInHasRoom(Hem hem) {
        return hem.firstTurn()
                .map(turn -> turn + 2 * hem.thickness() < hem.cloth() - turn)
                .orElse(true);
    }

    private static void check(HemPicture picture) {
        List<Seen> all = SeeingGraphics.of(
                (int) BOX.getWidth(),
                (int) BOX.getHeight(),
                Color.WHITE,
                g -> picture.paint(g, Palette.onPaper(), BOX, picture.scale(BOX)));
        List<Seen> written = all.stream().filter(seen -> !seen.text().isEmpty()).toList();
        List<Seen> drawn = all.stream()
                .filter(seen -> seen.text().isEmpty() && seen.painter().endsWith("FoldPainter"))
                .toList();
        assertThat(written).isNotEmpty();
        for (int i = 0; i < written.size(); i++) {
            Rectangle2D box = ink(written.get(i));
            for (Seen other : written.subList(0, i)) {
                assertThat(box.intersects(ink(other)))
                        .as(written.get(i) + " over " + other)
                        .isFalse();
            }
            for (Seen mark : drawn) {
                assertThat(box.intersects(mark.box()))
                        .as(written.get(i) + " over " + mark)
                        .isFalse();
            }
        }
    }

    private static Rectangle2D ink(Seen seen) {
        Rectangle2D box = seen.box();
        return new Rectangle2D.Double(box.getX() + 1, box.getY() + 2, box.getWidth() - 2, box.getHeight() - 4);
    }
}

package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Point;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.assertj.core.data.Percentage;
import org.hipparchus.analysis.differentiation.UnivariateDerivative1;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Amount;
import thrumwright.block.Course;
import thrumwright.block.EdgeFinish;
import thrumwright.block.Fall;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Posts;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Strand;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.block.YarnBlock;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.Stretches;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.testing.Seeds;

/**
 * The length that a block states against the path that is drawn: the arc length of that path, integrated numerically from
 * a curve that is built here from the visit order alone (see {@link MiddleLine}).
 */
class DrawnLengthTest {
    /** Where a length is exact. */
    private static final Percentage EXACT = Percentage.withPercentage(0.1);

    private static final Use WEFT = Use.of(MaterialRole.WEFT);
    private static final int CASES = Seeds.of(60, 12);

    private final RandomGenerator random =
            RandomGeneratorFactory.of("L64X128MixRandom").create(20);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ordering cord",
                "plain band",
                "slit band",
                "spread header",
                "twining",
                "soumak",
                "half hitches",
                "hemstitching"
            })
    void theStatedLengthIsThatOfTheDrawnPath(String kind) {
        for (int i = 0; i < CASES; i++) {
            Setting setting = setting();
            YarnBlock block = block(kind);
            List<Row> rows = block.rows(setting, Course.beginning());
            List<Strand> strands = block.strands(setting, rows);
            double integrated = strands.stream()
                    .mapToDouble(strand -> MiddleLine.of(strand).length())
                    .sum();
            assertThat(block.length(setting)).as("%s on %s", block, setting).isCloseTo(integrated, EXACT);
            assertThat(drawn(setting, strands)).isCloseTo(integrated, EXACT);
        }
    }

    /** What is drawn lies on the curve that is integrated, seen from the front. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "ordering cord",
                "plain band",
                "slit band",
                "spread header",
                "twining",
                "soumak",
                "half hitches",
                "hemstitching"
            })
    void whatIsDrawnLiesOnThatCurve(String kind) {
        for (int i = 0; i < Seeds.of(12, 3); i++) {
            Setting setting = setting();
            YarnBlock block = block(kind);
            List<Strand> strands = block.strands(setting, block.rows(setting, Course.beginning()));
            holdsDrawing(setting, strands);
        }
    }

    private static void holdsDrawing(Setting setting, List<Strand> strands) {
        double step = setting.gauge() / 25;
        Near curve = new Near(step);
        for (Strand strand : strands) {
            for (MiddleLine.Bit bit : MiddleLine.of(strand).bits()) {
                int steps = (int) Math.ceil(bit.length() / step) + 1;
                for (int j = 0; j <= steps; j++) {
                    UnivariateDerivative1[] at = bit.at((double) j / steps);
                    curve.add(at[0].getValue(), at[1].getValue());
                }
            }
        }
        for (Stretch stretch : Stretches.of(setting, strands, true, Detail.FINE)) {
            for (int j = 0; j < stretch.x().length; j++) {
                double x = stretch.x()[j];
                double y = stretch.y()[j];
                assertThat(curve.passes(x, y)).as("%s, %s on %s", x, y, setting).isTrue();
            }
        }
    }

    /** Points of a curve, found again by where they lie. */
    private static final class Near {
        private final double step;
        private final Map<Point, List<Point2D>> fields = new HashMap<>();

        /** @param step how near is near; fields are as wide, mm */
        Near(double step) {
            this.step = step;
        }

        void add(double x, double y) {
            fields.computeIfAbsent(field(x, y), none -> new ArrayList<>()).add(new Point2D.Double(x, y));
        }

        /** Whether a point of the curve lies nearer than a step. */
        boolean passes(double x, double y) {
            Point middle = field(x, y);
            for (int i = -1; i <= 1; i++) {
                for (int j = -1; j <= 1; j++) {
                    List<Point2D> there = fields.getOrDefault(new Point(middle.x + i, middle.y + j), List.of());
                    if (there.stream().anyMatch(at -> at.distance(x, y) < step)) {
                        return true;
                    }
                }
            }
            return false;
        }

        private Point field(double x, double y) {
            return new Point((int) Math.floor(x / step), (int) Math.floor(y / step));
        }
    }

    private static double drawn(Setting setting, List<Strand> strands) {
        return Stretches.of(setting, strands, true, Detail.FINE).stream()
                .mapToDouble(Stretch::length)
                .sum();
    }

    /**
     * The way that a warp end falls, integrated along what is drawn; the knots come on top as 16.372 bundle diameters each,
     * an upper figure. Exact for groups of one size, and never less than the longest.
     */
    @Test
    void knottedEndsNeedTheLongestFallAndItsKnots() {
        for (int i = 0; i < CASES; i++) {
            Setting warp = onItself();
            KnotRows knots = new KnotRows(
                    Tag.of("k"),
                    random.nextInt(1, 6),
                    random.nextInt(2, 9),
                    random.nextBoolean(),
                    random.nextBoolean() ? Optional.of(mm(random.nextDouble(5, 60))) : Optional.empty(),
                    mm(random.nextDouble(200, 400)));
            double knot = EdgeFinish.KNOT * knots.knotHeight(warp) / 3;
            double longest = knots.falls(warp).stream()
                    .mapToDouble(fall -> integrated(fall) + fall.knots() * knot)
                    .max()
                    .orElseThrow();
            assertThat(knots.freeWarp(warp)).as("%s on %s", knots, warp).isGreaterThan(longest * (1 - 1e-9));
            boolean alike = knots.groups(warp.ends()).stream().distinct().count() == 1;
            if (alike && knots.groups(warp.ends()).size() > 1) {
                assertThat(knots.freeWarp(warp)).isCloseTo(longest, EXACT);
            }
        }
    }

    @Test
    void aWarpLoopTakesWhatItsPathIsLong() {
        for (int i = 0; i < CASES; i++) {
            Setting warp = onItself();
            WarpLoops loops = new WarpLoops(Tag.of("l"), WarpLoops.Held.ROD, mm(random.nextDouble(1, 20)));
            assertThat(loops.turn(warp))
                    .isCloseTo(MiddleLine.of(loops.strand(warp)).length(), EXACT);
        }
    }

    @Test
    void aTurnedEndTakesWhatItsPathIsLong() {
        for (int i = 0; i < CASES; i++) {
            Setting warp = onItself();
            Side from = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
            TurnedEnds turned = new TurnedEnds(Tag.of("t"), random.nextInt(1, 7), true, from, mm(300));
            double most = 0;
            for (int row = 0; row < turned.rows(); row++) {
                List<Strand> strands = turned.strands(warp, row);
                assertThat(strands).hasSize(warp.ends() - 1);
                for (int end = 0; end < strands.size(); end++) {
                    double integrated = MiddleLine.of(strands.get(end)).length();
                    int neighbours = Math.min(turned.over(), warp.ends() - 1 - end);
                    assertThat(TurnedEnds.lengthRound(warp, neighbours))
                            .as("%s on %s", turned, warp)
                            .isCloseTo(integrated, EXACT);
                    assertThat(strands.get(end).length()).isCloseTo(integrated, EXACT);
                    most = Math.max(most, integrated);
                }
                assertThat(drawn(warp, strands))
                        .isCloseTo(strands.stream().mapToDouble(Strand::length).sum(), EXACT);
                holdsDrawing(warp, strands);
            }
            assertThat(turned.freeWarp(warp)).isCloseTo(2 * most + 300, EXACT);
        }
    }

    /** The first ends are passed by fewer, so that they near the cloth by less and take no more. */
    @Test
    void anEndOfAWovenEdgeTakesWhatItsPathIsLong() {
        for (int i = 0; i < CASES; i++) {
            Setting warp = onItself();
            Side from = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
            WovenEdge woven = new WovenEdge(Tag.of("w"), random.nextInt(2, 13), from, mm(300));
            List<Strand> strands = woven.strands(warp);
            assertThat(strands).hasSize(warp.ends() - 1);
            for (int end = 0; end < strands.size(); end++) {
                double integrated = MiddleLine.of(strands.get(end)).length();
                assertThat(strands.get(end).length()).isCloseTo(integrated, EXACT);
                double closed = WovenEdge.lengthThrough(warp, woven.neighbours(warp, end));
                if (end >= woven.through()) {
                    assertThat(closed).as("%s on %s", woven, warp).isCloseTo(integrated, EXACT);
                } else {
                    assertThat(closed).isGreaterThan(integrated - 1e-9);
                }
            }
            assertThat(drawn(warp, strands))
                    .isCloseTo(strands.stream().mapToDouble(Strand::length).sum(), EXACT);
            holdsDrawing(warp, strands);
            double most = WovenEdge.lengthThrough(warp, woven.neighbours(warp, 0));
            assertThat(woven.freeWarp(warp)).isGreaterThan(most + 300);
        }
    }

    @Test
    void aWrappingTakesWhatItsPathIsLong() {
        for (int i = 0; i < CASES; i++) {
            Setting yarn = setting();
            WrappedTassels tassels =
                    new WrappedTassels(Tag.of("t"), WEFT, random.nextInt(2, 9), random.nextInt(1, 30), mm(80));
            Strand strand = tassels.strand(yarn);
            double integrated = MiddleLine.of(strand).length();
            assertThat(tassels.lengthOfOne(yarn)).isCloseTo(integrated, EXACT);
            assertThat(strand.length()).isCloseTo(integrated, EXACT);
            assertThat(drawn(yarn, List.of(strand))).isCloseTo(integrated, EXACT);
            holdsDrawing(yarn, List.of(strand));
        }
    }

    private static double integrated(Fall fall) {
        double sum = 0;
        for (int i = 1; i < fall.spots().size(); i++) {
            double dx = fall.spots().get(i).x() - fall.spots().get(i - 1).x();
            double dy = fall.spots().get(i).down() - fall.spots().get(i - 1).down();
            sum += new RombergIntegrator().integrate(1000, share -> Math.sqrt(dx * dx + dy * dy), 0, 1);
        }
        return sum;
    }

    private Setting setting() {
        double spacing = random.nextDouble(0.7, 12);
        double warp = spacing * random.nextDouble(0.08, 0.5);
        double beaten = (spacing - warp) * random.nextDouble(0.05, 0.98);
        double relaxed = beaten * random.nextDouble(1, 2.2);
        // posts that stand so far off that they bend the cord by less than a quarter more than half way round
        double post = spacing * random.nextDouble(0.5, 6);
        Posts posts = new Posts(post, post * random.nextDouble(0.5, 3));
        return new Setting(
                random.nextInt(3, 14),
                spacing,
                warp,
                relaxed,
                beaten,
                random.nextBoolean() ? Optional.of(posts) : Optional.empty());
    }

    private Setting onItself() {
        double spacing = random.nextDouble(1, 8);
        double warp = spacing * random.nextDouble(0.08, 0.45);
        return new Setting(random.nextInt(2, 60), spacing, warp, warp, warp, Optional.empty());
    }

    private static Length mm(double mm) {
        return Length.of(mm, Unit.MILLIMETRE);
    }

    private YarnBlock block(String kind) {
        Tag tag = Tag.of("a");
        int rows = random.nextInt(1, 5);
        int under = random.nextInt(1, 4);
        Lean lean = random.nextBoolean() ? Lean.S : Lean.Z;
        return switch (kind) {
            case "ordering cord" -> new OrderingCord(tag, WEFT, rows, Optional.empty());
            case "plain band" ->
                new PlainBand(tag, WEFT, PlainBand.Purpose.PLAIN, new Amount.Picks(rows), Optional.empty());
            case "slit band" -> new SlitBand(tag, WEFT, random.nextInt(2, 9), new Amount.Picks(rows), Optional.empty());
            case "spread header" -> new SpreadHeader(tag, WEFT, rows, random.nextInt(1, 13), Optional.empty());
            case "twining" -> new Twining(tag, WEFT, rows, random.nextInt(1, 6), lean, random.nextBoolean());
            case "soumak" ->
                new Soumak(tag, WEFT, rows, under + random.nextInt(1, 5), under, lean, random.nextBoolean());
            case "hemstitching" ->
                new Hemstitching(
                        tag,
                        WEFT,
                        random.nextInt(1, 7),
                        random.nextInt(1, 5),
                        Hemstitching.Round.values()[random.nextInt(2)]);
            default -> new HalfHitch(tag, WEFT, rows, random.nextInt(1, 6));
        };
    }

    /** The test's own measure against a length known without it: one turn of a helix, π·2 round and 1 up. */
    @Test
    void theCurveItselfIsMeasuredRightly() {
        Setting setting = new Setting(2, 10, 1, 1, 1, Optional.empty());
        HalfHitch hitch = new HalfHitch(Tag.of("h"), WEFT, 1, 1);
        double turn = MiddleLine.of(hitch.strands(setting, hitch.rows(setting, Course.beginning()))
                        .get(0))
                .bits()
                .get(0)
                .length();
        assertThat(2 * turn).isCloseTo(Math.sqrt(4 * Math.PI * Math.PI + 4), within(1e-9));
    }
}

package thrumwright.drawing.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.block.Course;
import thrumwright.block.HalfHitch;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Strand;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** What is drawn is what is computed: the stretches are the strands, cut where they pass the warp. */
class StretchesTest {
    private static final double HAIR = 1e-9;
    private static final Use WEFT = Use.of(MaterialRole.WEFT);

    @ParameterizedTest
    @EnumSource(Detail.class)
    void areAsLongTogetherAsTheStrands(Detail detail) {
        RandomPieces pieces = new RandomPieces(11);
        int blocks = 0;
        for (int i = 0; i < Seeds.of(60, 12); i++) {
            for (Work work : works(Plan.of(pieces.next()))) {
                List<Strand> strands = work.block().strands(work.setting(), work.rows());
                double drawn = Stretches.of(work.setting(), strands, true, detail).stream()
                        .mapToDouble(Stretch::length)
                        .sum();
                double strand = strands.stream().mapToDouble(Strand::length).sum();
                assertThat(drawn).as("%s", work.block()).isCloseTo(strand, within(1e-9 * strand));
                blocks++;
            }
        }
        assertThat(blocks).isGreaterThan(Seeds.of(200));
    }

    @Test
    void aLineDrawnFinelyIsNearlyAsLongAsTheYarnSeenFromTheFront() {
        for (Work work : works(Plan.of(Pieces.panel()))) {
            List<Strand> strands = work.block().strands(work.setting(), work.rows());
            for (Stretch stretch : Stretches.of(work.setting(), strands, true, Detail.FINE)) {
                double flat = 0;
                for (int i = 1; i < stretch.x().length; i++) {
                    flat += Math.hypot(stretch.x()[i] - stretch.x()[i - 1], stretch.y()[i] - stretch.y()[i - 1]);
                }
                double slant = Math.abs(stretch.y()[stretch.y().length - 1] - stretch.y()[0]);
                // what the eye doesn't see is depth: the yarn can only be longer, but for a slant that isn't counted
                assertThat(flat)
                        .isLessThan(
                                stretch.length() + slant + 0.02 * work.setting().relaxed());
            }
        }
    }

    @Test
    void plainPicksPassEndsAsTheirShedSays() {
        RandomGenerator random = new RandomPieces(5).random();
        for (int i = 0; i < Seeds.of(40, 8); i++) {
            Setting setting = setting(random);
            Shed first = random.nextBoolean() ? Shed.OVER_FIRST : Shed.UNDER_FIRST;
            Course before = new Course(Optional.of(first), random.nextBoolean() ? Side.LEFT : Side.RIGHT);
            PlainBand band = Pieces.band("b", WEFT, PlainBand.Purpose.PLAIN, random.nextInt(1, 6));
            List<Row> rows = band.rows(setting, before);
            List<Stretch> stretches = Stretches.of(
                    setting, band.strands(setting, rows), true, random.nextBoolean() ? Detail.FINE : Detail.COARSE);
            for (Row row : rows) {
                for (int end = 0; end < setting.ends(); end++) {
                    // counted from the left: even ends as the first one, odd ends the other way
                    boolean over = (row.shed().orElseThrow() == Shed.OVER_FIRST) == (end % 2 == 0);
                    double y = (row.number() - 0.5) * setting.beaten();
                    assertThat(passes(stretches, true, end * setting.spacing(), y, setting))
                            .as("row %s over end %s of %s", row, end, setting)
                            .isEqualTo(over);
                    assertThat(passes(stretches, false, end * setting.spacing(), y, setting))
                            .isEqualTo(!over);
                }
            }
        }
    }

    private static boolean passes(List<Stretch> stretches, boolean front, double x, double y, Setting setting) {
        return stretches.stream()
                .filter(stretch -> stretch.front() == front)
                .filter(stretch -> stretch.lowX() <= x + 1e-9 && stretch.highX() >= x - 1e-9)
                .anyMatch(stretch -> Math.abs(stretch.y()[stretch.y().length / 2] - y) < 0.4 * setting.beaten());
    }

    @Test
    void twinedStitchesLeanLikeTheirLetterOnBothFaces() {
        RandomGenerator random = new RandomPieces(6).random();
        for (int i = 0; i < Seeds.of(40, 8); i++) {
            Setting setting = setting(random);
            Lean lean = random.nextBoolean() ? Lean.S : Lean.Z;
            Twining twining = new Twining(
                    Tag.of("t"), WEFT, random.nextInt(1, 4), random.nextInt(1, 4), lean, random.nextBoolean());
            checkLean(twining, setting, random, twining.countered(), lean, true);
            checkLean(twining, setting, random, twining.countered(), lean, false);
        }
    }

    @Test
    void soumakFloatsLeanLikeTheirLetter() {
        RandomGenerator random = new RandomPieces(7).random();
        for (int i = 0; i < Seeds.of(40, 8); i++) {
            Setting setting = setting(random);
            Lean lean = random.nextBoolean() ? Lean.S : Lean.Z;
            int under = random.nextInt(1, 3);
            int over = under + random.nextInt(1, 3);
            Soumak soumak =
                    new Soumak(Tag.of("s"), WEFT, random.nextInt(1, 4), over, under, lean, random.nextBoolean());
            checkLean(soumak, setting, random, soumak.countered(), lean, true);
        }
    }

    /** All stitches away from the edges lean up to the right in a Z row and down in an S row; from behind, mirrored. */
    private static void checkLean(
            YarnBlock block, Setting setting, RandomGenerator random, boolean countered, Lean first, boolean front) {
        Course before = new Course(Optional.empty(), random.nextBoolean() ? Side.LEFT : Side.RIGHT);
        List<Row> rows = block.rows(setting, before);
        double each = block.height(setting) / rows.size();
        int checked = 0;
        for (Stretch stretch : Stretches.of(setting, block.strands(setting, rows), true, Detail.FINE)) {
            double reach = stretch.highX() - stretch.lowX();
            boolean inside = stretch.lowX() > 0.1 * setting.spacing()
                    && stretch.highX() < setting.span() - 0.1 * setting.spacing();
            if (stretch.front() != front || !inside || reach < 0.9 * setting.spacing()) {
                continue;
            }
            int last = stretch.x().length - 1;
            int row = (int) Math.floor((stretch.y()[0] + stretch.y()[last]) / 2 / each);
            boolean z = (first == Lean.Z) == (!countered || row % 2 == 0);
            double slope = (stretch.y()[last] - stretch.y()[0]) / (stretch.x()[last] - stretch.x()[0]);
            double seen = front ? slope : -slope;
            assertThat(seen).as("%s row %s", block, row).matches(value -> z ? value > 0 : value < 0);
            checked++;
        }
        assertThat(checked).as("%s on %s", block, setting).isPositive();
    }

    @Test
    void aHitchedRowShowsTwoWrapsAGroup() {
        Setting setting = new Setting(12, 4, 1, 1.5, 1, Optional.empty());
        HalfHitch hitch = new HalfHitch(Tag.of("h"), WEFT, 1, 3);
        List<Row> rows = hitch.rows(setting, Course.beginning());
        List<Stretch> stretches = Stretches.of(setting, hitch.strands(setting, rows), true, Detail.FINE);
        for (int group = 0; group < 4; group++) {
            double middle = (group * 3 + 1) * setting.spacing();
            long wraps = stretches.stream()
                    .filter(stretch -> !stretch.front() && stretch.lowX() < middle && stretch.highX() > middle)
                    .count();
            assertThat(wraps).isEqualTo(2);
        }
    }

    @Test
    void eachStaysOnItsSideAndIsOrderedAsWorked() {
        RandomPieces pieces = new RandomPieces(12);
        for (int i = 0; i < Seeds.of(20, 4); i++) {
            for (Work work : works(Plan.of(pieces.next()))) {
                List<Stretch> stretches = Stretches.of(
                        work.setting(), work.block().strands(work.setting(), work.rows()), true, Detail.FINE);
                assertThat(stretches).isSortedAccordingTo((a, b) -> Double.compare(a.order(), b.order()));
                double thin = Math.min(work.setting().beaten(), work.setting().relaxed());
                double thick = Math.max(work.setting().beaten(), work.setting().relaxed());
                assertThat(stretches).allSatisfy(stretch -> {
                    assertThat(Arrays.stream(stretch.lift())).allMatch(lift -> lift >= 0 && lift <= 1 + HAIR);
                    assertThat(Arrays.stream(stretch.width()))
                            .allMatch(width -> width >= thin - HAIR && width <= thick + HAIR);
                });
            }
        }
    }

    static List<Work> works(Plan plan) {
        List<Work> works = new ArrayList<>();
        plan.start().blocks().stream().map(BlockPlan::work).forEach(work -> work.ifPresent(works::add));
        plan.top().blocks().stream().map(BlockPlan::work).forEach(work -> work.ifPresent(works::add));
        return works;
    }

    private static Setting setting(RandomGenerator random) {
        double spacing = random.nextDouble(1.5, 8);
        double warp = spacing * random.nextDouble(0.1, 0.4);
        double relaxed = spacing * random.nextDouble(0.1, 0.55);
        return new Setting(
                random.nextInt(12, 30), spacing, warp, relaxed, relaxed * random.nextDouble(0.4, 1), Optional.empty());
    }
}

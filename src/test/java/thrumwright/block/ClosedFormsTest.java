package thrumwright.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.testing.Seeds;

/** Each block's closed form against the peg engine on its own visit order, over seeded random warps and yarns. */
class ClosedFormsTest {
    private static final int CASES = Seeds.of(1500);

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
    void closedFormIsTheEnginesLength(String kind) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(kind.hashCode());
        for (int i = 0; i < CASES; i++) {
            Setting setting = setting(random);
            YarnBlock block = block(kind, random);
            double engine = block.strands(setting, block.rows(setting, Course.beginning())).stream()
                    .mapToDouble(Strand::length)
                    .sum();
            assertThat(block.length(setting))
                    .as("%s on %s", block, setting)
                    .isCloseTo(engine, Percentage.withPercentage(1e-9));
        }
    }

    /** Round a rod exactly; round a nail πr + |s − 2r| is never less than the straight way to it, half round, and back. */
    @Test
    void aLoopTakesTheEnginesLength() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(3);
        for (int i = 0; i < CASES; i++) {
            Setting warp = setting(random);
            Length thick = Length.of(random.nextDouble(0.5, 12), Unit.MILLIMETRE);
            WarpLoops rod = new WarpLoops(Tag.of("a"), WarpLoops.Held.ROD, thick);
            assertThat(rod.turn(warp)).isCloseTo(rod.strand(warp).length(), Percentage.withPercentage(1e-9));
            assertThat(rod.mirrored().mirrored()).isEqualTo(rod);
            double radius = (thick.mm() + warp.warp()) / 2;
            WarpLoops nails = new WarpLoops(Tag.of("a"), WarpLoops.Held.NAILS, thick);
            assertThat(nails.turn(warp))
                    .isGreaterThanOrEqualTo(Math.PI * radius)
                    .isGreaterThanOrEqualTo(warp.spacing() - 1e-9);
        }
    }

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
    void mirroringTwiceGivesTheBlockAgain(String kind) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        for (int i = 0; i < 200; i++) {
            YarnBlock block = block(kind, random);
            assertThat(block.mirrored().mirrored()).isEqualTo(block);
        }
    }

    private static Setting setting(RandomGenerator random) {
        double spacing = random.nextDouble(0.7, 12);
        double warp = spacing * random.nextDouble(0.08, 0.5);
        double beaten = (spacing - warp) * random.nextDouble(0.05, 0.98);
        double relaxed = beaten * random.nextDouble(1, 2.2);
        boolean posts = random.nextBoolean();
        return new Setting(
                random.nextInt(3, 90),
                spacing,
                warp,
                relaxed,
                beaten,
                posts
                        ? Optional.of(new Posts(random.nextDouble(2, 90), random.nextDouble(0.5, 60)))
                        : Optional.empty());
    }

    private static YarnBlock block(String kind, RandomGenerator random) {
        Tag tag = Tag.of("a");
        Use use = new Use(
                new Material.OfRole(MaterialRole.WEFT),
                random.nextBoolean(),
                random.nextBoolean() ? Optional.of(Side.RIGHT) : Optional.empty());
        Optional<Shed> shed = random.nextBoolean() ? Optional.of(Shed.UNDER_FIRST) : Optional.empty();
        int rows = random.nextInt(1, 7);
        int under = random.nextInt(1, 4);
        Lean lean = random.nextBoolean() ? Lean.S : Lean.Z;
        return switch (kind) {
            case "ordering cord" -> new OrderingCord(tag, use, rows, shed);
            case "plain band" -> new PlainBand(tag, use, PlainBand.Purpose.PLAIN, new Amount.Picks(rows), shed);
            case "slit band" -> new SlitBand(tag, use, random.nextInt(2, 40), new Amount.Picks(rows), shed);
            case "spread header" -> new SpreadHeader(tag, use, rows, random.nextInt(1, 13), shed);
            case "twining" -> new Twining(tag, use, rows, random.nextInt(1, 6), lean, random.nextBoolean());
            case "soumak" ->
                new Soumak(tag, use, rows, under + random.nextInt(1, 5), under, lean, random.nextBoolean());
            case "hemstitching" ->
                new Hemstitching(
                        tag,
                        use,
                        random.nextInt(1, 7),
                        rows,
                        random.nextBoolean() ? Hemstitching.Round.FIRST : Hemstitching.Round.LAST);
            default -> new HalfHitch(tag, use, rows, random.nextInt(1, 6));
        };
    }
}

package thrumwright.drawing.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Setting;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.piece.End;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/** A wide block drawn from a narrow warp is the block itself. */
class RepetitionTest {
    private static final Use WEFT = Use.of(MaterialRole.WEFT);

    /** Every kind on warps of 150 to 399 ends, from either side and in either shed. */
    static Stream<Work> wide() {
        RandomGenerator random = new RandomPieces(29).random();
        return Stream.generate(() -> random).limit(Seeds.of(12, 3)).flatMap(seeded -> works(seeded).stream());
    }

    private static List<Work> works(RandomGenerator random) {
        Loom loom = Pieces.panel().loom();
        Loom bare = loom.withUprights(Optional.empty());
        Piece piece =
                Pieces.panel().withLoom(random.nextBoolean() ? loom : bare).withStart(new End(blocks(random)));
        return works(piece, random.nextInt(150, 400));
    }

    private static List<Work> works(Piece piece, int ends) {
        Warp warp = new Warp(Length.parse(Math.round(ends * 100 / 3.0) / 10.0 + " mm"), Sett.parse("3/cm"), "cord");
        return Plan.of(piece.withWarp(warp)).start().blocks().stream()
                .flatMap(block -> block.work().stream())
                .toList();
    }

    private static List<Block> blocks(RandomGenerator random) {
        int under = random.nextInt(1, 5);
        return List.of(
                Pieces.band("a", WEFT, PlainBand.Purpose.PLAIN, random.nextInt(1, 4)),
                new OrderingCord(Tag.of("b0"), WEFT, random.nextInt(1, 4), Optional.empty()),
                new Twining(
                        Tag.of("b1"), WEFT, random.nextInt(1, 4), random.nextInt(1, 6), Lean.S, random.nextBoolean()),
                new Soumak(Tag.of("b2"), WEFT, random.nextInt(1, 4), under + random.nextInt(1, 6), under, Lean.Z, true),
                new HalfHitch(Tag.of("b3"), WEFT, random.nextInt(1, 3), random.nextInt(1, 6)));
    }

    @ParameterizedTest
    @MethodSource("wide")
    void everyStretchIsFoundOnTheNarrowWarp(Work work) {
        BlockPicture picture = BlockPicture.of(work);
        assertThat(picture.repetition().repeats()).isTrue();
        List<Stretch> all = both(picture);
        List<Stretch> few = both(picture.narrow());
        double s = picture.setting().spacing();
        int met = 0;
        for (Repetition.Slab slab : picture.repetition().slabs()) {
            for (Stretch stretch : all) {
                if (stretch.highX() >= slab.left(s) && stretch.lowX() < slab.right(s)) {
                    assertThat(few).anyMatch(other -> same(stretch, other, slab.shift() * s, 0));
                    met++;
                }
            }
        }
        assertThat(met).isGreaterThanOrEqualTo(all.size());
    }

    /** Both edges and what lies between, behind the warp and before it: whatever the spacing, no part is drawn twice. */
    @ParameterizedTest
    @MethodSource("wide")
    void ofAWideBlockSixPartsAreDrawnAtMost(Work work) {
        BlockPicture picture = BlockPicture.of(work);
        BufferedImage image = new BufferedImage(900, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.clipRect(0, 0, 900, 60);
        new ClothPainter(g, Palette.onPaper(), false, Face.FRONT)
                .blocks(
                        new View(880 / picture.setting().span(), 10, 40),
                        List.of(new ClothPainter.PlacedBlock(picture, 0, picture.height())),
                        List.of(),
                        picture.setting(),
                        work.yarn(),
                        0,
                        1);
        g.dispose();
        assertThat(picture.narrow().strips()).isBetween(3, 6);
    }

    /** Many rows of each kind that has some, an odd number and an even one. */
    static Stream<Work> tall() {
        Piece piece = Pieces.panel()
                .withStart(new End(List.of(
                        Pieces.band("a", WEFT, PlainBand.Purpose.PLAIN, 151),
                        new Twining(Tag.of("b1"), WEFT, 120, 2, Lean.S, true),
                        new Soumak(Tag.of("b2"), WEFT, 119, 4, 2, Lean.Z, true),
                        new HalfHitch(Tag.of("b3"), WEFT, 118, 2))));
        return works(piece, 12).stream();
    }

    @ParameterizedTest
    @MethodSource("tall")
    void everyStretchOfManyRowsIsFoundAmongFewer(Work work) {
        BlockPicture picture = BlockPicture.of(work);
        assertThat(picture.courses().repeats()).isTrue();
        List<Stretch> all = both(picture);
        List<Stretch> few = both(picture.narrow());
        double each = picture.rowHeight();
        int met = 0;
        for (Repetition.Slab rows : picture.courses().slabs()) {
            for (Stretch stretch : all) {
                if (stretch.highY() >= rows.low(each) && stretch.lowY() < rows.high(each)) {
                    assertThat(few).anyMatch(other -> same(stretch, other, 0, rows.shift() * each));
                    met++;
                }
            }
        }
        assertThat(met).isGreaterThanOrEqualTo(all.size());
        assertThat(places(picture)).as("tails").hasSize(2);
    }

    private static List<Stretch> both(BlockPicture picture) {
        return Stream.concat(picture.front(Detail.FINE).stream(), picture.back(Detail.FINE).stream())
                .toList();
    }

    private static boolean same(Stretch wide, Stretch narrow, double shift, double raised) {
        if (wide.front() != narrow.front()
                || wide.x().length != narrow.x().length
                || wide.joinsAtStart() != narrow.joinsAtStart()
                || wide.joinsAtEnd() != narrow.joinsAtEnd()) {
            return false;
        }
        for (int i = 0; i < wide.x().length; i++) {
            double off = Math.abs(wide.x()[i] - shift - narrow.x()[i])
                    + Math.abs(wide.y()[i] - raised - narrow.y()[i])
                    + Math.abs(wide.width()[i] - narrow.width()[i]);
            if (off > 1e-6) {
                return false;
            }
        }
        return true;
    }

    /** With one repetition less than the narrow warp has, nothing is left out. */
    @ParameterizedTest
    @MethodSource("wide")
    void tailsHangWhereTheyDoOnAWarpThatIsDrawnWhole(Work work) {
        BlockPicture picture = BlockPicture.of(work);
        Repetition repetition = picture.repetition();
        Setting few = work.setting().withEnds(repetition.fewer() - repetition.step());
        BlockPicture whole =
                BlockPicture.of(new Work(work.block(), work.yarn(), few, work.rows(), work.cut(), work.oneLength()));
        assertThat(whole.repetition().repeats()).isFalse();
        assertThat(places(picture)).isEqualTo(places(whole));
    }

    private static List<String> places(BlockPicture picture) {
        return picture.tails(0).stream()
                .map(tail -> "%s, %.6f mm up, %s".formatted(tail.side(), tail.y(), tail.inFront()))
                .toList();
    }
}

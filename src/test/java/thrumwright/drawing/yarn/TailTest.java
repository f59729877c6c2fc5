package thrumwright.drawing.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.piece.End;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

class TailTest {
    @Test
    void hangingTailsDontLieOnEachOther() {
        RandomPieces pieces = new RandomPieces(21);
        for (int i = 0; i < Seeds.of(60); i++) {
            Plan plan = Plan.of(pieces.next());
            for (PiecePicture picture : List.of(PiecePicture.of(plan), PiecePicture.close(plan))) {
                for (Place place : Place.values()) {
                    checkApart(picture.tails(place));
                }
            }
        }
    }

    private static void checkApart(List<Tail> tails) {
        for (Tail one : tails) {
            for (Tail other : tails) {
                if (one == other || one.side() != other.side() || one.y() < other.y()) {
                    continue;
                }
                boolean endsAbove = one.y() - one.down() >= other.y() + 0.5 * other.thickness();
                boolean passesOutside = one.out() >= other.out() + 0.5 * (one.thickness() + other.thickness());
                assertThat(endsAbove || passesOutside || one.y() == other.y())
                        .as("%s beside %s", one, other)
                        .isTrue();
            }
        }
    }

    /** On the board, where they would take the cloth's room, they hang beside its turns and are still seen to hang. */
    @Test
    void hangingCloseTheyReachNoFartherAndStandOutFromTheTurns() {
        RandomPieces pieces = new RandomPieces(22);
        for (int i = 0; i < Seeds.of(60); i++) {
            Plan plan = Plan.of(pieces.next());
            PiecePicture usual = PiecePicture.of(plan);
            PiecePicture close = PiecePicture.close(plan);
            double turns = close.ground().warp() / 2;
            for (Place place : Place.values()) {
                assertThat(close.tails(place)).hasSameSizeAs(usual.tails(place));
                close.tails(place).forEach(tail -> {
                    assertThat(tail.out()).isGreaterThan(turns + tail.thickness() / 2);
                    assertThat(tail.down()).isGreaterThanOrEqualTo(1.19 * tail.thickness());
                });
            }
            for (Side side : Side.values()) {
                assertThat(close.reach().yarn(side))
                        .isLessThanOrEqualTo(usual.reach().yarn(side) + 1e-9);
            }
        }
    }

    @Test
    void hangWhereTheWorkSaysAndWithinTheMargin() {
        Plan plan = Plan.of(Pieces.panel());
        PiecePicture picture = PiecePicture.of(plan);
        List<Side> wanted = plan.start().blocks().stream()
                .flatMap(block -> block.work().stream())
                .flatMap(work -> work.tails().stream())
                .sorted()
                .toList();
        assertThat(picture.tails(Place.START).stream().map(Tail::side).sorted().toList())
                .isEqualTo(wanted);
        Setting ground = picture.ground();
        for (Tail tail : picture.tails(Place.START)) {
            Stretch line = tail.stretch(ground);
            assertThat(line.lowX() - tail.thickness()).isGreaterThan(-picture.margin());
            assertThat(line.highX() + tail.thickness()).isLessThan(picture.span() + picture.margin());
        }
    }

    /** A wrapped yarn hangs from where it begins or ends, and comes from under its own wraps. */
    @Test
    void aTailLiesAsItsYarnDoes() {
        Soumak soumak = new Soumak(Tag.of("s"), Use.of(MaterialRole.WEFT), 1, 4, 2, Lean.Z, false);
        Plan plan = Plan.of(Pieces.panel().withStart(new End(List.of(soumak))));
        Setting ground = plan.piece().setting(plan.piece().warpYarn());

        List<Tail> tails = PiecePicture.of(plan).tails(Place.START);

        assertThat(tails).extracting(Tail::lies).containsOnly(Tail.Lies.UNDER_ITS_ROW);
        assertThat(tails).extracting(Tail::x).contains(ground.spacing());
        PlainBand band = new PlainBand(
                Tag.of("b"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(2),
                Optional.of(Shed.OVER_FIRST));
        assertThat(PiecePicture.of(Plan.of(Pieces.panel().withStart(new End(List.of(band)))))
                        .tails(Place.START))
                .extracting(Tail::lies)
                .containsExactlyInAnyOrder(Tail.Lies.IN_FRONT, Tail.Lies.BEHIND);
    }
}

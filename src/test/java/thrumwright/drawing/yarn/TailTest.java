package thrumwright.drawing.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thrumwright.block.Setting;
import thrumwright.block.Side;
import thrumwright.drawing.piece.PiecePicture;
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
            PiecePicture picture = PiecePicture.of(Plan.of(pieces.next()));
            for (Place place : Place.values()) {
                checkApart(picture.tails(place));
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
}

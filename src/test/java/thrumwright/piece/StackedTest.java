package thrumwright.piece;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.testing.Pieces;

/** Blocks in layers are a list like any other, whatever they share. */
class StackedTest {
    private static Block band(String id, int picks) {
        return Pieces.band(id, Use.of(MaterialRole.WEFT), PlainBand.Purpose.PLAIN, picks);
    }

    @Test
    void areAListLikeAnyOther() {
        Random random = new Random(5);
        List<Block> plain = new ArrayList<>();
        End end = End.empty();
        for (int i = 0; i < 3_000; i++) {
            int at = random.nextInt(plain.size() + 1);
            if (at == plain.size() || random.nextInt(3) == 0 && plain.size() < 60) {
                Block added = band("b" + i, 1 + random.nextInt(9));
                plain.add(at, added);
                end = end.with(at, added);
            } else if (random.nextInt(4) == 0) {
                end = end.without(List.of(plain.remove(at).id()));
            } else {
                Block other = plain.get(at).withTag(new Tag(plain.get(at).id(), "l" + i));
                plain.set(at, other);
                end = end.replaced(other);
            }
            assertThat(end.blocks()).isEqualTo(plain).hasSameSizeAs(plain);
            assertThat(end).isEqualTo(new End(plain)).hasSameHashCodeAs(new End(plain));
        }
    }

    @Test
    void whatWasHandedInMayChangeAfterwards() {
        List<Block> plain = new ArrayList<>(List.of(band("a", 1), band("b", 2)));
        End end = new End(plain);
        plain.clear();
        assertThat(end.blocks()).hasSize(2);
    }
}

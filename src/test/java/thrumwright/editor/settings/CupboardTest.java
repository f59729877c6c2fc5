package thrumwright.editor.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Stash;
import thrumwright.store.FileProblem;
import thrumwright.testing.RandomPieces;
import thrumwright.yarn.Yarn;

class CupboardTest {
    @TempDir
    Path folder;

    private Cupboard cupboard() {
        return new Cupboard(Optional.of(folder));
    }

    @Test
    void whatAPieceHasIsThereForTheNext() throws FileProblem {
        Piece piece = Beginnings.empty(UnitSystem.METRIC);
        Piece named = piece.withLoom(piece.loom().withName("Pipe loom"));
        cupboard().keep(named);
        cupboard().keep(Beginnings.empty(UnitSystem.INCHES));
        Stash kept = cupboard().stash();
        assertThat(kept.looms()).extracting(Loom::name).containsExactly("", "Pipe loom");
        assertThat(kept.yarns()).extracting(Yarn::name).containsExactly("Cotton cord", "Wool", "Scrap yarn");
        assertThat(kept.yarns().get(1).thickness().text()).as("as it was last").isEqualTo("0.08 in");
    }

    /** Whatever pieces come, in whatever order: it can be read again, and no name comes twice. */
    @Test
    void anyPiecesCanBeKept() throws FileProblem {
        RandomPieces pieces = new RandomPieces(816);
        for (int i = 0; i < 40; i++) {
            cupboard().keep(pieces.next());
        }
        Stash kept = cupboard().stash();
        assertThat(kept.yarns()).isNotEmpty().hasSizeLessThanOrEqualTo(Stash.MOST);
        assertThat(kept.yarns()).extracting(Yarn::id).doesNotHaveDuplicates();
        assertThat(kept.looms()).isNotEmpty();
    }

    @Test
    void whatCantBeReadIsLeftAsItIs() throws Exception {
        Path file = Files.writeString(folder.resolve("looms-and-yarns.json"), "{\"thrumwrightStash\": 99}");
        assertThat(cupboard().stash()).isEqualTo(Stash.empty());
        assertThatThrownBy(() -> cupboard().keep(Beginnings.empty(UnitSystem.METRIC)))
                .isInstanceOf(FileProblem.class)
                .hasMessageContaining("newer");
        assertThat(file).hasContent("{\"thrumwrightStash\": 99}");
    }
}

package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.sheet.SampleWarp;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;

/** Every structure and every demo piece, woven from its sheet: on even and odd warps, from both sides, in both units. */
class LibraryWovenTest {
    static Stream<String> structures() {
        return Structures.builtIn().all().stream().map(Structure::id);
    }

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    @ParameterizedTest
    @MethodSource("structures")
    void everyStructure(String id) {
        Structure structure = Structures.builtIn().byId(id).orElseThrow();
        for (Piece piece : alike(Pieces.panel())) {
            assertThat(CodeWeaverTest.differences(Plan.of(structure.on(piece, Place.START))))
                    .isEmpty();
            assertThat(CodeWeaverTest.differences(Plan.of(structure.on(piece, Place.TOP))))
                    .isEmpty();
        }
    }

    /** Several edges one above the other, with open warp between them. */
    @Test
    void aSampleWarp() {
        List<Structure> edges = Stream.of("folded-hem", "knotted-fringe", "turned-edge", "plaited-fringe")
                .map(id -> Structures.builtIn().byId(id).orElseThrow())
                .toList();
        for (Piece piece : alike(Pieces.panel())) {
            assertThat(CodeWeaverTest.differences(Plan.of(SampleWarp.of(piece, edges, Locale.UK))))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyDemoPiece(String name) throws FileProblem {
        for (Piece piece : alike(PieceFile.read(BuiltIn.DEMO.text(name)).piece())) {
            assertThat(CodeWeaverTest.differences(Plan.of(piece))).isEmpty();
        }
    }

    /** As it is and with an end less, in one unit or the other, after every last pick that the design can have. */
    private static List<Piece> alike(Piece piece) {
        List<Piece> pieces = new ArrayList<>();
        double spacing = piece.warp().nominalWidth() / piece.warp().ends();
        for (int ends : new int[] {-1, 0}) {
            Length width = Length.parse(
                    String.format(Locale.ROOT, "%.3f mm", piece.warp().nominalWidth() + ends * spacing));
            for (Side side : Side.values()) {
                for (Shed shed : Shed.values()) {
                    UnitSystem units = UnitSystem.values()[pieces.size() % 2];
                    pieces.add(piece.withWarp(piece.warp().withWidth(width))
                            .withHabits(Habits.usual(units))
                            .withDesign(Pieces.ending(piece.design(), shed, side)));
                }
            }
        }
        assertThat(pieces.stream().map(each -> each.warp().ends() % 2).distinct())
                .hasSize(2);
        return pieces;
    }
}

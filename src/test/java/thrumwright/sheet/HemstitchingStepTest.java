package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.Hemstitching;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Tag;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Repair;
import thrumwright.testing.Pieces;

/** Hemstitching lies on picks that are woven: it has its place in the stack, and the hands come to it later. */
class HemstitchingStepTest {
    private final Block stitching = NewBlocks.ofKind("hemstitching", UnitSystem.METRIC);

    private static PlainBand band(String id, Optional<Shed> first) {
        return (PlainBand) ((PlainBand) NewBlocks.ofKind("plain-plain", UnitSystem.METRIC))
                .withFirstShed(first)
                .withTag(Tag.of(id));
    }

    private Piece piece(Optional<Shed> firstAbove) {
        return Pieces.panel()
                .withTop(new Top.FollowsStart(Set.of()))
                .withStart(new End(
                        List.of(band("waste", Optional.of(Shed.OVER_FIRST)), stitching, band("first", firstAbove))));
    }

    private static Step step(StepSheet sheet, Place place) {
        return sheet.steps().stream()
                .filter(step -> step.picture()
                        .filter(picture ->
                                picture.place() == place && picture.blockId().equals("hemstitching"))
                        .isPresent())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void atTheStartItWaitsForItsPicksAndAtTheTopTheyAreWoven() {
        StepSheet sheet = StepSheet.of(Plan.of(piece(Optional.empty())), Locale.UK);
        Step start = step(sheet, Place.START);
        Step top = step(sheet, Place.TOP);

        assertThat(start.sentences().get(0))
                .isEqualTo("Don’t work it yet: first weave 2 picks of what comes above it. Then go round them.");
        assertThat(start.sentences())
                .contains("Then lead it up behind 2 picks, and bring it to the front in the next gap.");
        assertThat(top.sentences().get(0)).isEqualTo("It goes round 2 picks below it, which are woven already.");
        assertThat(top.sentences())
                .contains("Then lead it down behind 2 picks, and bring it to the front in the next gap.");
        assertThat(start.cautions()).hasSize(1).isEqualTo(top.cautions());
        assertThat(start.cautions().get(0)).startsWith("Needles hurt:");
    }

    @Test
    void putIntoATopOfItsOwnItGoesRoundTheLastPicks() {
        Texts texts = Texts.of(Locale.UK);
        Edits edits = new Edits(texts.phrases(), texts.words());
        Piece parted = Pieces.panel().withTop(new Top.OnItsOwn(Pieces.panel().end(Place.TOP)));

        assertThat(put(edits, parted, Place.START)).isEqualTo(Hemstitching.Round.FIRST);
        assertThat(put(edits, parted, Place.TOP)).isEqualTo(Hemstitching.Round.LAST);
    }

    private Hemstitching.Round put(Edits edits, Piece piece, Place place) {
        Piece after = edits.add(piece, new Slot(place, 3), stitching).change().apply(piece);
        return ((Hemstitching) after.end(place).block("hemstitching").orElseThrow()).round();
    }

    /** The band below ends under the first end, and the next begins so: stitches between them don't part the two picks. */
    @Test
    void picksBelowItAndAboveItInOneShedAreStillSeen() {
        assertThat(codes(piece(Optional.of(Shed.UNDER_FIRST)))).contains(Finding.Code.SAME_SHED);
        assertThat(codes(piece(Optional.of(Shed.OVER_FIRST)))).doesNotContain(Finding.Code.SAME_SHED);
        assertThat(codes(piece(Optional.empty()))).doesNotContain(Finding.Code.SAME_SHED);
    }

    /** As if the stitches weren't there: the band below them gets a pick more. */
    @Test
    void thatIsMendedInTheBandBelow() {
        Finding same = Findings.of(Plan.of(piece(Optional.of(Shed.UNDER_FIRST)))).all().stream()
                .filter(finding -> finding.code() == Finding.Code.SAME_SHED)
                .findFirst()
                .orElseThrow();

        assertThat(same.repair())
                .hasValueSatisfying(repair -> assertThat(repair).isInstanceOfSatisfying(Repair.Picks.class, picks -> {
                    assertThat(picks.id()).isEqualTo("waste");
                    assertThat(picks.before()).isEqualTo(4);
                    assertThat(picks.picks()).isEqualTo(5);
                }));
    }

    private static List<Finding.Code> codes(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream()
                .filter(finding -> finding.place().equals(Optional.of(Place.START)))
                .map(Finding::code)
                .toList();
    }
}

package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Habits;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.piece.Warp;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.finding.Repair;
import thrumwright.plan.words.FindingWords;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Thickness;

/** A hook-and-loop strip asks for a hem that stands 5 mm beyond it on either side (CCI Notes 13/4), wherever one is offered. */
class StripTest {
    private static final Piece HUNG = Pieces.panel().withMadeFor(Optional.of(MadeFor.HUNG));

    private static Optional<Finding> shallow(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream()
                .filter(finding -> finding.code() == Code.HEM_SHALLOW_FOR_A_STRIP)
                .findFirst();
    }

    @Test
    void aShallowHemOfWhatIsToHangIsFoundWithItsRepair() {
        Finding finding = shallow(HUNG).orElseThrow();
        assertThat(FindingWords.of(HUNG, Locale.UK).say(finding))
                .contains("a hook-and-loop strip 2 cm wide", "must be 3 cm deep, and it is 1.4 cm");
        // 30 − 14.389 mm are 15.6 picks of 1 mm, by pairs 16 more than 6
        assertThat(finding.repair()).contains(new Repair.Picks(Place.START, "facing", 6, 22));
    }

    @Test
    void whatDoesNotHangOrHasABarIsLeftAlone() {
        assertThat(shallow(HUNG.withMadeFor(Optional.empty()))).isEmpty();
        for (MadeFor other : List.of(MadeFor.MOUNTED, MadeFor.FRAMED, MadeFor.FLOOR_OR_TABLE, MadeFor.SAMPLE)) {
            assertThat(shallow(HUNG.withMadeFor(Optional.of(other)))).isEmpty();
        }
        Structure bar = Structures.builtIn().byId("bar-sleeve").orElseThrow();
        assertThat(shallow(bar.on(HUNG, Place.TOP))).isEmpty();
    }

    /** No structure claims a strip that it can't hold, metric and in inches. */
    @Test
    void everyStructureThatClaimsAStripHoldsIt() {
        List<Structure> claiming = Structures.builtIn().all().stream()
                .filter(structure -> Stream.concat(Stream.of(structure.use()), structure.goodFor().stream())
                        .anyMatch(said -> said.contains("hook-and-loop")))
                .toList();
        assertThat(claiming).isNotEmpty();
        for (Structure structure : claiming) {
            for (UnitSystem units : UnitSystem.values()) {
                Piece piece = Beginnings.with(structure, units).withMadeFor(Optional.of(MadeFor.HUNG));
                assertThat(shallow(piece)).as(structure.id()).isEmpty();
                assertThat(Plan.of(piece).top().hem().orElseThrow().room())
                        .as(structure.id())
                        .isGreaterThanOrEqualTo(30);
            }
        }
    }

    /** The note: strips are 1.9 to 5 cm wide, and their width goes by weight and size. */
    @Test
    void aHeavierPieceHangsByAWiderStrip() {
        assertThat(Plan.of(HUNG).strip().width()).isEqualTo(Length.parse("2 cm"));
        Piece inches = HUNG.withHabits(Habits.usual(UnitSystem.INCHES));
        assertThat(Plan.of(inches).strip().width()).isEqualTo(Length.parse("3/4 in"));
        Piece heavy = HUNG.withWarp(new Warp(Length.parse("60 cm"), Sett.parse("2/cm"), "cord"))
                .withYarns(HUNG.yarns().stream()
                        .map(yarn -> yarn.withThickness(Thickness.parse("4 mm")))
                        .toList());
        double width = 0;
        for (String height : List.of("10 cm", "60 cm", "2 m")) {
            Plan plan = Plan.of(heavy.withDesign(heavy.design().withHeight(Length.parse(height))));
            assertThat(plan.strip().width().mm()).isGreaterThan(width).isBetween(19.0, 51.0);
            width = plan.strip().width().mm();
        }
    }
}

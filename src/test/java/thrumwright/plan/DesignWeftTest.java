package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Piece;
import thrumwright.piece.Portion;
import thrumwright.piece.Stripes;
import thrumwright.piece.Warp;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** What the design takes of each yarn. */
class DesignWeftTest {
    private static Stripes.Stripe other(String yarn, String part) {
        return new Stripes.Stripe(yarn, Portion.parse(part));
    }

    private static Stripes stripes(String first, Stripes.Stripe... others) {
        return new Stripes(first.isEmpty() ? Optional.empty() : Optional.of(Portion.parse(first)), List.of(others));
    }

    /** The worked panel, its last stripe and a further yarn as thick as its first. */
    private static Piece panel(Stripes stripes) {
        Piece panel = Pieces.panel();
        List<Yarn> yarns = new ArrayList<>(panel.yarns());
        yarns.add(panel.yarn("weft").withId("last").withName("Last"));
        yarns.add(panel.yarn("weft").withId("foam").withName("Foam"));
        Piece more = panel.withYarns(yarns);
        return more.withDesign(more.design().withLastYarn("last").withStripes(stripes));
    }

    private static double share(Piece piece, String id) {
        return DesignWeft.of(piece).parts().stream()
                .filter(part -> part.yarn().id().equals(id))
                .mapToDouble(DesignWeft.Covered::share)
                .sum();
    }

    /**
     * By hand: 71 spaces of 10/3 mm at 1.147374 are 271.545275, the turn 2.978851; 300 picks of 1 mm in 30 cm take 82.357238 m,
     * with 3 % of ease 84.827955 m.
     */
    @Test
    void theWorkedPanel() {
        Piece piece = Pieces.panel();
        DesignWeft weft = DesignWeft.of(piece);
        assertThat(weft.told()).isFalse();
        assertThat(weft.parts()).hasSize(1);
        assertThat(weft.parts().get(0).share()).isEqualTo(1);
        assertThat(weft.length(piece.yarn("weft")) / (1 + piece.ease(piece.yarn("weft"))))
                .isCloseTo(82_357.24, within(0.1));
        assertThat(weft.length(piece.yarn("weft"))).isCloseTo(84_827.95, within(0.1));
    }

    @Test
    void nothingToldIsHalfAndHalf() {
        assertThat(share(panel(Stripes.NONE), "weft")).isEqualTo(0.5);
        assertThat(share(panel(Stripes.NONE), "last")).isEqualTo(0.5);
    }

    @Test
    void firstAndLastShareWhatOthersLeave() {
        Piece piece = panel(stripes("", other("foam", "20 %")));
        assertThat(share(piece, "foam")).isCloseTo(0.2, within(1e-12));
        assertThat(share(piece, "weft")).isCloseTo(0.4, within(1e-12));
        assertThat(share(piece, "last")).isCloseTo(0.4, within(1e-12));
    }

    /** A stripe of 6 cm of 30 is a fifth. */
    @Test
    void aHeightIsAShareOfTheDesigns() {
        Piece piece = panel(stripes("6 cm", other("foam", "3 cm")));
        assertThat(share(piece, "weft")).isCloseTo(0.2, within(1e-12));
        assertThat(share(piece, "foam")).isCloseTo(0.1, within(1e-12));
        assertThat(share(piece, "last")).isCloseTo(0.7, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"25 %, 0.25", "'12,5%', 0.125", "8 cm, 0.4", "0 %, 0"})
    void partsAsTheyAreTyped(String typed, double share) {
        assertThat(Portion.parse(typed).of(200)).isCloseTo(share, within(1e-12));
        assertThat(Portion.parse("8", UnitSystem.METRIC.usual()).text()).isEqualTo("8 cm");
    }

    @Test
    void whatIsNoPartIsRefused() {
        assertThatThrownBy(() -> Portion.parse("a quarter"))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("“a quarter” is no part of the design; write it like “25 %” or “8 cm”.");
        assertThatThrownBy(() -> Portion.parse("101 %")).isInstanceOf(BadMeasure.class);
        assertThatThrownBy(() -> panel(stripes("70 %", other("foam", "40 %"))))
                .hasMessage(
                        "That makes 110 % of a design 30 cm high; together its yarns can’t be more than all of it.");
    }

    /** A design that became lower keeps what was told; all is so much less, and the weaver is told. */
    @Test
    void aDesignThatBecameTooLowIsTold() {
        Piece piece = panel(stripes("20 cm", other("foam", "10 cm")));
        Piece low = piece.withDesign(piece.design().withHeight(Length.parse("20 cm")));
        assertThat(share(low, "weft")).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(share(low, "foam")).isCloseTo(1.0 / 3, within(1e-9));
        assertThat(Findings.of(Plan.of(low)).all()).extracting(Finding::code).contains(Finding.Code.DESIGN_OVERFULL);
        assertThat(Findings.of(Plan.of(piece)).all())
                .extracting(Finding::code)
                .doesNotContain(Finding.Code.DESIGN_OVERFULL);
    }

    /**
     * The published rug of {@link PublishedRugTest}: 57 yd of maroon, 226 of pink and 212 of rust are to be bought, in stripes that
     * weave 34 in. Told by their shares, each is enough and not far too much.
     */
    @Test
    void thePublishedRugsThreeColours() {
        Piece panel = panel(Stripes.NONE);
        Yarn wool = panel.yarn("weft")
                .withThickness(new Thickness.Counted(260, 2, CountSystem.YARDS_PER_POUND))
                .withSample(Optional.of(new Sample(21, Length.parse("1 in"))));
        Piece rug = panel.withWarp(new Warp(
                        Length.parse("21 in"), Sett.parse("4/in"), "cord", Optional.of(Length.parse("19 1/2 in"))))
                .withYarns(panel.yarns().stream()
                        .map(yarn -> yarn.id().equals("cord")
                                ? yarn.withThickness(new Thickness.Counted(1600, 4, CountSystem.YARDS_PER_POUND))
                                : wool.withId(yarn.id()))
                        .toList());
        Design design = rug.design().withHeight(Length.parse("34 in"));
        Piece told = rug.withDesign(design.withStripes(stripes("45.6 %", other("foam", "11.5 %"))));
        DesignWeft weft = DesignWeft.of(told);
        assertThat(weft.length(told.yarn("weft")) / 914.4).isBetween(0.75 * 226, 226.0);
        assertThat(weft.length(told.yarn("foam")) / 914.4).isBetween(0.75 * 57, 57.0);
        assertThat(weft.length(told.yarn("last")) / 914.4).isBetween(0.75 * 212, 212.5);
    }

    /** Whatever is told, the shares are the whole design, and the totals hold all of it. */
    @Test
    void theSharesAreTheWholeDesign() {
        RandomPieces pieces = new RandomPieces(611);
        int told = 0;
        for (int i = 0; i < Math.max(30, Seeds.of(1000)); i++) {
            Plan plan = Plan.of(pieces.next());
            DesignWeft weft = DesignWeft.of(plan.piece());
            assertThat(weft.parts().stream()
                            .mapToDouble(DesignWeft.Covered::share)
                            .sum())
                    .isCloseTo(1, within(1e-9));
            double grams = plan.totals().stream()
                    .mapToDouble(total -> total.inDesign() / 1e6 * total.yarn().tex())
                    .sum();
            assertThat(grams).isCloseTo(weft.grams(), within(1e-9 * grams));
            assertThat(Weight.of(plan).design()).isEqualTo(weft.grams());
            told += weft.told() ? 1 : 0;
        }
        assertThat(told).isGreaterThan(3);
    }

    /** What is only assumed is no reason to say that a stock is short. */
    @Test
    void aStockIsShortOfWhatWasTold() {
        Piece piece = panel(Stripes.NONE);
        Piece stocked = piece.withYarns(piece.yarns().stream()
                .map(yarn -> yarn.id().equals("last") ? yarn.withStock(Optional.of(Length.parse("20 m"))) : yarn)
                .toList());
        assertThat(Findings.of(Plan.of(stocked)).all())
                .extracting(Finding::code)
                .doesNotContain(Finding.Code.STOCK_SHORT);
        Piece told = stocked.withDesign(stocked.design().withStripes(stripes("10 %")));
        assertThat(Findings.of(Plan.of(told)).all()).extracting(Finding::code).contains(Finding.Code.STOCK_SHORT);
    }

    @Test
    void theSheetSaysItInNumbers() {
        StepSheet assumed = StepSheet.of(Plan.of(panel(Stripes.NONE)), Locale.UK);
        assertThat(assumed.yarnNote())
                .startsWith("The design is taken to be half ")
                .contains("half Last");
        assertThat(assumed.yarns())
                .filteredOn(line -> line.what().equals("Last"))
                .singleElement()
                .satisfies(line ->
                        assertThat(line.text()).contains("design 42.4 m").contains("Buy "));
        StepSheet told = StepSheet.of(Plan.of(panel(stripes("6 cm", other("foam", "10 %")))), Locale.UK);
        assertThat(told.yarnNote()).contains("20 % ").contains("10 % Foam, 70 % Last");
    }
}

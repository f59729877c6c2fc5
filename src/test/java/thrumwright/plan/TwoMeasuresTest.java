package thrumwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.piece.Piece;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Findings;
import thrumwright.plan.words.FindingWords;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** A yarn that is told twice, by its wraps and by its length in a mass. */
class TwoMeasuresTest {
    /** The weft is soft wool of 5 wraps per cm, 2 mm. */
    private static Piece with(String also) {
        Piece panel = Pieces.panel();
        List<Yarn> yarns = panel.yarns().stream()
                .map(yarn -> yarn.id().equals("weft") ? yarn.withAlsoTold(Optional.of(Thickness.parse(also))) : yarn)
                .toList();
        return panel.withYarns(yarns);
    }

    private static List<String> differ(Piece piece) {
        return Findings.of(Plan.of(piece)).all().stream()
                .filter(finding -> finding.code() == Finding.Code.MEASURES_DIFFER)
                .map(FindingWords.of(piece, Locale.UK)::say)
                .toList();
    }

    @Test
    void measuresNearEachOtherAreLeftAlone() {
        assertThat(differ(Pieces.panel())).isEmpty();
        assertThat(differ(with("225 m/100 g"))).isEmpty();
        assertThat(differ(with("130 m/100 g"))).isEmpty();
    }

    /** 225 m for 100 g is 1.90 mm; a mass that is four times as large makes the yarn twice as thick. */
    @Test
    void measuresMoreThanAThirdApartAreFound() {
        assertThat(differ(with("56.25 m/100 g")))
                .singleElement()
                .asString()
                .contains("one of its measures makes it 2 mm thick and the other 3.79 mm, more than a third apart");
        assertThat(differ(with("900 m/100 g"))).hasSize(1);
    }

    @Test
    void nothingElseGoesByTheSecond() {
        Plan one = Plan.of(Pieces.panel());
        Plan two = Plan.of(with("56.25 m/100 g"));
        assertThat(two.finishedHeight()).isEqualTo(one.finishedHeight());
        assertThat(two.start().height()).isEqualTo(one.start().height());
    }

    @Test
    void theFileKeepsIt() throws FileProblem {
        Piece piece = with("225 m/100 g");
        assertThat(PieceFile.read(new PieceFile(piece, Unknown.none()).text()).piece())
                .isEqualTo(piece);
    }

    /**
     * Wraps per inch against yards to a pound of soft wool, the middles of two published tables: ‘Measuring wraps per inch’
     * (BellaOnline spinning pages) and ‘What are yarn weights?’ (Angora Valley). Within a third but for the thickest, whose wraps
     * lie looser on a ruler than a taut one would: there it comes out up to half as many again.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 900, 1.34",
        "13.5, 1500, 1.34",
        "17, 2200, 1.34",
        "19, 2600, 1.34",
        "7, 450, 1.34",
        "5, 300, 1.5",
        "20.5, 1975, 1.34",
        "16.5, 1375, 1.34",
        "12, 1100, 1.34",
        "10, 975, 1.34",
        "7, 700, 1.55"
    })
    void publishedWrapsAndLengthsAgree(double wraps, double yardsToThePound, double within) {
        Thickness told = Thickness.parse(yardsToThePound + " yd/lb");
        double counted = 25.4 / told.diameter(Fibre.WOOL, Firmness.SOFT);
        assertThat(Math.max(counted / wraps, wraps / counted)).isLessThan(within);
    }
}

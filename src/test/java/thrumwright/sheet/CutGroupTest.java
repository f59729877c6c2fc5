package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;

class CutGroupTest {
    private static final Phrases PHRASES = Phrases.of("thrumwright.sheet.steps", Locale.UK);

    private static CutLine line(int step, String shared) {
        return new CutLine(
                Place.START,
                "b" + step,
                Optional.empty(),
                "Silt",
                "",
                "",
                "Soumak",
                step,
                2,
                1200,
                "1.20 m",
                "5",
                shared);
    }

    private static List<String> remarks(CutLine... lines) {
        List<CutGroup> groups = CutGroup.of(List.of(lines));
        assertThat(groups).hasSize(1);
        return groups.get(0).remarks(PHRASES);
    }

    @Test
    void aRemarkThatIsNotOfAllSaysWhoseItIs() {
        String shared = "butterflies of one yarn, 2.40 m";
        assertThat(remarks(line(3, ""), line(5, shared), line(8, ""))).containsExactly("step 5: " + shared);
        assertThat(remarks(line(3, shared), line(5, ""), line(8, shared))).containsExactly("steps 3, 8: " + shared);
        assertThat(remarks(line(3, shared), line(5, shared))).containsExactly(shared);
        assertThat(remarks(line(3, "strands, 1 m in all"), line(5, shared)))
                .containsExactly("step 3: strands, 1 m in all", "step 5: " + shared);
        assertThat(remarks(line(3, ""))).isEmpty();
    }
}

package thrumwright.output.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.StageWords;
import thrumwright.sheet.Step;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;

class SlipPictureTest {
    private final Fonts fonts = Fonts.load();
    private final Phrases phrases = Phrases.of("thrumwright.sheet.steps", Locale.UK);
    private final Type type = new Type(fonts, 1, 1);

    /** Right comes before wrong, each says what it is in words, and the words fit on a line below the picture. */
    @Test
    void everyPairSaysWhatIsRightAndWhatIsWrong() {
        int pairs = 0;
        for (Structure structure : Structures.builtIn().all()) {
            Plan plan = Plan.of(structure.on(Pieces.panel(), Place.START));
            for (EndPlan end : List.of(plan.start(), plan.top())) {
                for (BlockPlan block : end.blocks()) {
                    List<SlipPicture> both = SlipPicture.both(plan, end, block, phrases, type, Palette.onPaper());
                    if (!both.isEmpty()) {
                        pairs++;
                        assertThat(both).extracting(SlipPicture::right).containsExactly(true, false);
                        assertThat(both.get(0).caption()).startsWith("right");
                        assertThat(both.get(1).caption()).startsWith("wrong: ");
                        assertThat(both.get(0).says()).endsWith(".").doesNotContain("{", "wrong");
                        assertThat(both.get(1).says())
                                .contains("with a cross", "his is wrong.")
                                .doesNotContain("{");
                        both.forEach(slip -> assertThat(TextPart.width(slip.caption(), type.small()))
                                .as(slip.caption())
                                .isLessThan(slipWidth(plan, end, block)));
                    }
                }
            }
        }
        assertThat(pairs).isGreaterThan(100);
    }

    /** On A4 with usual margins. */
    private double slipWidth(Plan plan, EndPlan end, BlockPlan block) {
        PageSetup setup = PageSetup.usual(Paper.A4);
        Step.Picture picture = new Step.Picture(end.place(), block.block().id(), "");
        PartMaker make = new PartMaker(type, Palette.onPaper(), phrases);
        return KindPictures.of(plan, new StageWords(plan, Locale.UK), List.of(picture), make)
                .slipWidth(setup.width() - 2 * setup.marginPoints());
    }
}

package thrumwright.editor.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.sheet.OwnWording;
import thrumwright.testing.Pieces;

/** The places of a wording needn't be known by heart: they are offered, with what stands in them. */
class PlaceButtonTest {
    private final JTextArea wording = new JTextArea("Beat  picks.");

    private List<JMenuItem> offered(Map<String, String> places) {
        PlaceButton button = new PlaceButton(Texts.of(Locale.UK), () -> places, wording);
        return Stream.of(button.popup().getSubElements())
                .map(JMenuItem.class::cast)
                .toList();
    }

    @Test
    void putsAPlaceWhereOneIsWriting() {
        Map<String, String> places = new LinkedHashMap<>();
        places.put("side", "left");
        places.put("picks", "6");
        List<JMenuItem> items = offered(places);
        assertThat(items).extracting(JMenuItem::getText).containsExactly("{side}   left", "{picks}   6");
        wording.setCaretPosition(5);
        items.get(1).doClick(0);
        assertThat(wording.getText()).isEqualTo("Beat {picks} picks.");
        wording.select(5, 12);
        items.get(0).doClick(0);
        assertThat(wording.getText()).isEqualTo("Beat {side} picks.");
    }

    /** Whatever is offered can be kept: each place by itself is a wording that the block takes. */
    @Test
    void allThatIsOfferedIsTaken() {
        Plan plan = Plan.of(Pieces.panel());
        for (Block block : Pieces.panel().start().blocks()) {
            wording.setText("");
            for (JMenuItem item : offered(new OwnWording(plan, Locale.UK).offered(Place.START, block.id()))) {
                item.doClick(0);
            }
            Block worded = block.withTag(block.tag().withWords(wording.getText()));
            OwnWords.check(worded);
            assertThat(worded.tag().words()).contains("{block}", "{place}", "{height}");
        }
    }
}

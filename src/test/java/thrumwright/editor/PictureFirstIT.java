package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Amount;
import thrumwright.block.PlainBand;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** A change shows in the picture before anything is said of it, and without all of the window being painted. */
class PictureFirstIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private EditorWindow editor;
    private PieceCanvas canvas;
    private JLabel worst;
    private Hands hands;
    private JTextComponent amount;

    @BeforeEach
    void open() {
        window.show(() -> {
            editor = Rooms.with(new Settings(Optional.empty())).open(Optional.empty());
            return editor.frame();
        });
        hands = new Hands(window, editor);
        canvas = hands.find("canvas", PieceCanvas.class);
        worst = hands.find("findingLine", JLabel.class);
    }

    /** What is there at once, within the event of the change. */
    private record AtOnce(boolean pictured, Rectangle dirty, Rectangle whole, String said) {}

    private AtOnce change(Edit edit) {
        return onEventThread(() -> {
            RepaintManager manager = RepaintManager.currentManager(canvas);
            manager.paintDirtyRegions();
            editor.session().edit(edit);
            boolean pictured = canvas.picture().plan() == editor.session().plan();
            return new AtOnce(
                    pictured,
                    manager.getDirtyRegion(canvas),
                    manager.getDirtyRegion(editor.frame().getRootPane()),
                    worst.getText());
        });
    }

    @Test
    void thePictureComesBeforeTheWords() {
        AtOnce stiff = change(
                Edit.of("no waste", piece -> piece.withStart(piece.start().without(Set.of("waste")))));
        assertThat(stiff.pictured()).isTrue();
        assertThat(stiff.dirty().isEmpty()).isFalse();
        assertThat(stiff.whole().isEmpty()).isTrue();
        assertThat(stiff.said()).doesNotContain("waste band");
        waitFor("what is the matter", () -> onEventThread(() -> worst.getText().contains("waste band")));
    }

    @Test
    void anAmountIsPaintedWithoutTheRestOfTheWindow() {
        AtOnce facing = change(facing(9));
        assertThat(facing.pictured()).isTrue();
        assertThat(facing.dirty().isEmpty()).isFalse();
        assertThat(facing.whole().isEmpty()).isTrue();
        assertThat(onEventThread(() -> canvas.map()
                        .spot(Place.START, "facing")
                        .orElseThrow()
                        .plan()
                        .work()
                        .orElseThrow()
                        .rows()))
                .hasSize(9);
    }

    private static Edit facing(int picks) {
        return Edit.of(
                "more",
                piece -> piece.withStart(piece.start()
                        .replaced(((PlainBand) piece.start().block("facing").orElseThrow())
                                .withAmount(new Amount.Picks(picks)))));
    }

    private void choose(String id) {
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, id));
            return null;
        });
        window.robot().waitForIdle();
        amount = hands.find("field.block.amount", JTextComponent.class);
    }

    /** What the block's first field says; for the event thread. */
    private String field() {
        return amount.getText();
    }

    /** While something is tried, the picture is there at once; the fields beside it follow when that pauses. */
    @Test
    void whatIsTriedIsPicturedAtOnceAndSaidInThePause() {
        choose("facing");
        List<Object> atOnce = onEventThread(() -> {
            String before = field();
            editor.session().preview(facing(9));
            return List.of(canvas.picture().plan() == editor.session().plan(), field().equals(before));
        });
        assertThat(atOnce).containsExactly(true, true);
        waitFor("the field to follow", () -> onEventThread(() -> field().contains("9")));
    }

    /** However a trial ends: from then on nothing is outdated. */
    @Test
    void whatATrialComesToIsSaidAtOnce() {
        choose("facing");
        List<String> said = onEventThread(() -> {
            String before = field();
            editor.session().preview(facing(9));
            editor.session().preview(facing(11));
            editor.session().edit(facing(11));
            String after = field();
            editor.session().preview(facing(5));
            editor.session().endPreview();
            return List.of(before, after, field());
        });
        assertThat(said.get(0)).doesNotContain("11");
        assertThat(said.get(1)).contains("11");
        assertThat(said.get(2)).isEqualTo(said.get(1));
    }
}

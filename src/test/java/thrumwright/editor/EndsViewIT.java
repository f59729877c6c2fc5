package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Amount;
import thrumwright.block.PlainBand;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** Compares both ends in the window, parts them and lets the top follow again. */
class EndsViewIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private EditorWindow editor;
    private FrameFixture frame;

    private void open() {
        frame = window.show(() -> {
            Workroom room = Rooms.forgetful();
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        GuiActionRunner.execute(() -> frame.tabbedPane("views").target().setSelectedIndex(3));
        frame.robot().waitForIdle();
    }

    private List<String> said() {
        JComponent view = frame.robot().finder().findByName(frame.target(), "ends", JComponent.class);
        return GuiActionRunner.execute(() -> {
            List<String> all = new ArrayList<>();
            collect(view, all);
            return all;
        });
    }

    private static void collect(Container container, List<String> into) {
        for (Component child : container.getComponents()) {
            if (child instanceof JTextComponent text) {
                into.add(text.getText());
            } else if (child instanceof Container inner) {
                collect(inner, into);
            }
        }
    }

    @Test
    void saysHowTheTopDiffersPartsItAndLetsItFollowAgain() {
        open();
        assertThat(said())
                .contains(
                        "The start shows 1.5 mm of soumak in Tide teal, the top 1.5 mm of soumak in Samphire green.",
                        "Left out of the top: Ordering cord.");

        frame.button("ends.top-own").click();
        frame.robot().waitForIdle();
        GuiActionRunner.execute(() -> {
            PlainBand facing = (PlainBand)
                    editor.session().piece().block(Place.TOP, "facing").orElseThrow();
            editor.session().edit(editor.desk().edits().amount(Place.TOP, facing.withAmount(new Amount.Picks(9))));
        });
        frame.robot().waitForIdle();
        assertThat(said())
                .contains(
                        "6 rows in the start, 9 in the top.",
                        "The bottom hem is 1.4 cm deep, the top hem 1.7 cm.",
                        "If it follows the start again, the top gives up its Facing. You can undo that.");

        frame.button("ends.top-follows").click();
        frame.robot().waitForIdle();
        assertThat(editor.session().piece().topFollows()).isTrue();
        assertThat(editor.session().history().undoName())
                .contains("let the top follow the start, giving up its Facing");
        GuiActionRunner.execute(() -> editor.session().undo());
        assertThat(editor.session().piece().topFollows()).isFalse();
        assertThat(said()).contains("6 rows in the start, 9 in the top.");
    }

    @Test
    void aBlocksNameShowsItOnTheCanvas() {
        open();
        JComponent pair = frame.robot().finder().findByName(frame.target(), "pair.stiff", JComponent.class);
        frame.robot().click(pair.getComponent(0));
        frame.robot().waitForIdle();
        assertThat(editor.session().selection().lead()).contains("stiff");
    }
}

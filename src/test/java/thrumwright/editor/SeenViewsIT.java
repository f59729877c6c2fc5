package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Amount;
import thrumwright.block.PlainBand;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/**
 * Views and forms follow the piece only while they are seen: whenever one is seen it must say of the piece as it is now
 * what it says in a window that was only just opened.
 */
class SeenViewsIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Workroom room;
    private EditorWindow editor;

    @Test
    void whateverIsSeenIsAboutThePieceAsItIs() {
        FrameFixture frame = window.show(() -> {
            room = Rooms.forgetful();
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        GuiActionRunner.execute(() -> editor.session().select(Selection.of(Place.START, "facing")));
        Map<String, List<String>> before = said(editor);

        edit(piece -> piece.withTitle("Saltings at low water"));
        edit(piece -> piece.withWarp(piece.warp().withWidth(Length.parse("23 cm"))));
        edit(piece -> piece.withYarns(piece.yarns().stream()
                .map(yarn -> yarn.withName(yarn.name() + " again"))
                .toList()));
        GuiActionRunner.execute(() -> {
            PlainBand facing = (PlainBand)
                    editor.session().piece().block(Place.START, "facing").orElseThrow();
            editor.session().edit(editor.desk().edits().amount(Place.START, facing.withAmount(new Amount.Picks(9))));
        });
        Map<String, List<String>> after = said(editor);
        assertThat(after).isEqualTo(fresh()).isNotEqualTo(before);

        GuiActionRunner.execute(() -> editor.session().jump(0));
        assertThat(said(editor)).isEqualTo(before);
        GuiActionRunner.execute(() -> editor.session().jump(4));
        assertThat(said(editor)).isEqualTo(after);
        frame.robot().waitForIdle();
    }

    private void edit(UnaryOperator<Piece> change) {
        GuiActionRunner.execute(() -> editor.session().edit(Edit.of("change", change)));
    }

    /** What a new window says of the same piece. */
    private Map<String, List<String>> fresh() {
        EditorWindow other = GuiActionRunner.execute(() -> {
            EditorWindow opened = room.open(new Session(editor.session().toSave(), Optional.empty()));
            opened.show();
            opened.session().select(Selection.of(Place.START, "facing"));
            return opened;
        });
        return said(other);
    }

    /** All that each view and each form says while it is seen; the history is another in every window. */
    private static Map<String, List<String>> said(EditorWindow editor) {
        Map<String, List<String>> said = new TreeMap<>();
        for (String name : List.of("forms", "views")) {
            JTabbedPane tabs = GuiActionRunner.execute(
                    () -> (JTabbedPane) named(editor.frame(), name).orElseThrow());
            int count = GuiActionRunner.execute(tabs::getTabCount);
            for (int i = count - (name.equals("views") ? 2 : 1); i >= 0; i--) {
                int tab = i;
                GuiActionRunner.execute(() -> tabs.setSelectedIndex(tab));
                // by another event: what is first seen is made in parts
                said.put(name + tab, GuiActionRunner.execute(() -> words(tabs.getComponentAt(tab))));
            }
        }
        return said;
    }

    private static List<String> words(Component component) {
        List<String> words = new ArrayList<>();
        collect(component, words);
        return words;
    }

    private static void collect(Component component, List<String> into) {
        if (component instanceof CellRendererPane) {
            // whatever was painted last
            return;
        }
        if (component instanceof JTextComponent text) {
            into.add(text.getText());
        } else if (component instanceof JLabel label) {
            into.add(label.getText());
        } else if (component instanceof JComboBox<?> box) {
            into.add(String.valueOf(box.getSelectedItem()));
        } else if (component instanceof AbstractButton button) {
            into.add(button.getText() + button.isSelected());
        } else if (component instanceof JTable table) {
            for (int cell = 0; cell < table.getRowCount() * table.getColumnCount(); cell++) {
                into.add(
                        String.valueOf(table.getValueAt(cell / table.getColumnCount(), cell % table.getColumnCount())));
            }
        } else if (component instanceof Container container) {
            into.add(String.valueOf(
                    container.getAccessibleContext() == null
                            ? ""
                            : container.getAccessibleContext().getAccessibleDescription()));
            for (Component child : container.getComponents()) {
                collect(child, into);
            }
        }
    }

    private static Optional<Component> named(Container container, String name) {
        for (Component child : container.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            Optional<Component> found = child instanceof Container inner ? named(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}

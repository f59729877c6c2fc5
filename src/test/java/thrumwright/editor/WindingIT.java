package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Piece;
import thrumwright.testing.WindowTest;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Yarn;

/** Several strands wound together, by hand. */
class WindingIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private EditorWindow editor;
    private Hands hands;

    private void open(String tab) {
        window.show(() -> {
            Workroom room = Rooms.forgetful();
            editor = room.open(Optional.empty());
            return editor.frame();
        });
        hands = new Hands(window, editor);
        onEventThread(() -> {
            JTabbedPane forms = hands.find("forms", JTabbedPane.class);
            forms.setSelectedIndex(forms.indexOfTab(tab));
            return null;
        });
        hands.settle();
    }

    private Piece piece() {
        return onEventThread(() -> editor.session().piece());
    }

    private Yarn last() {
        return piece().yarns().get(piece().yarns().size() - 1);
    }

    private Bundle bundle() {
        return last().bundle().orElseThrow();
    }

    private boolean shown(String name) {
        return !window.robot()
                .finder()
                .findAll(each -> name.equals(each.getName()) && each.isShowing())
                .isEmpty();
    }

    private void fill(String field, String text) {
        Component box = hands.find(field, JTextField.class);
        hands.click(field);
        waitFor("the keyboard at " + field, () -> onEventThread(box::isFocusOwner));
        // a click into a field that has the keyboard already selects nothing
        hands.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        hands.type(text);
    }

    private void fillAndTake(String field, String text) {
        fill(field, text);
        hands.key(KeyEvent.VK_ENTER);
    }

    private void choose(String box, String wanted) {
        JComboBox<?> boxes = hands.find(box, JComboBox.class);
        onEventThread(() -> {
            for (int i = 0; i < boxes.getItemCount(); i++) {
                if (boxes.getItemAt(i).toString().equals(wanted)) {
                    boxes.setSelectedIndex(i);
                    return i;
                }
            }
            throw new AssertionError("no “" + wanted + "” in " + box);
        });
        window.robot().waitForIdle();
    }

    @Test
    void aBlendIsWoundAndWoven() {
        open("Yarns");
        Piece before = piece();
        hands.clickRow("yarns", 1);
        assertThat(shown("field.yarn.strand.1"))
                .as("a yarn by itself asks for no strands")
                .isFalse();
        assertThat(shown("field.yarn.thickness")).isTrue();

        hands.click("windYarn");
        assertThat(bundle().strands()).isEqualTo(2);
        assertThat(shown("field.yarn.thickness")).isFalse();
        hands.waitForFocus("field.yarn.name");
        hands.type("Tide blend");

        fillAndTake("field.yarn.strands.1", "3");
        choose("field.yarn.more", "Creek mud");
        assertThat(bundle().text()).isEqualTo("3 × " + before.yarns().get(1).name() + " + 1 × Creek mud");
        fillAndTake("field.yarn.strands.2", "2");
        assertThat(bundle().strands()).isEqualTo(5);

        fill("field.yarn.strands.2", "0");
        waitFor("the reason", () -> shown("field.yarn.strands.2.reason"));
        assertThat(onEventThread(() -> hands.find("field.yarn.strands.2.reason", JTextComponent.class)
                        .getText()))
                .isEqualTo("“0” can't be so many strands; give 1 to 60.");
        hands.key(KeyEvent.VK_ESCAPE);
        assertThat(bundle().strands()).isEqualTo(5);

        itIsCutStrandByStrand();
        choose("field.yarn.strand.2", "none");
        assertThat(bundle().parts()).hasSize(1);
        hands.ctrl(KeyEvent.VK_Z);
        assertThat(bundle().parts()).hasSize(2);
    }

    @Test
    void theDesignsYarnsAreToldByWhoeverAsks() {
        open("Piece");
        assertThat(shown("field.design.first-part")).isFalse();
        assertThat(shown("field.design.other.1")).isFalse();
        hands.click("stripes");
        assertThat(shown("field.design.other-part.1")).isFalse();

        fillAndTake("field.design.first-part", "8");
        choose("field.design.other.1", "Creek mud");
        assertThat(shown("field.design.other-part.1")).isTrue();
        assertThat(shown("field.design.other.2")).isTrue();
        fillAndTake("field.design.other-part.1", "12 %");
        assertThat(piece().design().stripes().share(piece().design().height().mm()))
                .isCloseTo(80 / piece().design().height().mm() + 0.12, within(1e-9));

        fill("field.design.first-part", "95 %");
        waitFor("the reason", () -> shown("field.design.first-part.reason"));
        assertThat(onEventThread(() -> hands.find("field.design.first-part.reason", JTextComponent.class)
                        .getText()))
                .startsWith("That makes 107 % of a design ");
        hands.key(KeyEvent.VK_ESCAPE);
        assertThat(piece().design().stripes().first().orElseThrow().text()).isEqualTo("8 cm");

        choose("field.design.other.1", "none");
        assertThat(piece().design().stripes().others()).isEmpty();
        assertThat(shown("field.design.other-part.1")).isFalse();
    }

    private void itIsCutStrandByStrand() {
        onEventThread(() -> {
            editor.session()
                    .edit(Edit.of(
                            "weave with it",
                            piece -> piece.withDesign(piece.design().withFirstYarn(last().id()))));
            return null;
        });
        hands.tab("Cut list");
        JTable cuts = hands.find("cuts", JTable.class);
        waitFor(
                "the strands in the cut list",
                () -> onEventThread(() -> {
                    for (int row = 0; row < cuts.getRowCount(); row++) {
                        Component cell = cuts.prepareRenderer(cuts.getCellRenderer(row, 3), row, 3);
                        if (cell instanceof JLabel label && label.getText().startsWith("Tide blend (3 strands of ")) {
                            return true;
                        }
                    }
                    return false;
                }));
    }
}

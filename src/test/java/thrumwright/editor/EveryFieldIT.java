package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.piece.Piece;
import thrumwright.testing.WindowTest;

/** Types what makes no sense, and then what does, into every field of every form. */
class EveryFieldIT {
    /** What no field can make sense of unless it takes any words. */
    private static final List<String> NONSENSE =
            List.of("a few", "7 furlongs", "−4 cm", "1//2 in", "99999999999 km", "12 mm of them", "½½ in ½");

    /** One of these makes sense in any field, and is something new there. */
    private static final List<String> SENSE = List.of(
            "7 mm",
            "1 1/4 in",
            "2.5 cm",
            "31 cm",
            "0.9 m",
            "5",
            "3",
            "2",
            "1",
            "4/cm",
            "17 %",
            "7 wraps in 1 cm",
            "#123456",
            "21 picks in 2 cm",
            "6.2 m for 10 picks",
            "23.5 cm",
            "80 m");

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;

    private static List<JTextComponent> typed(JComponent form) {
        return Stage.all(
                form,
                JTextComponent.class,
                field -> field.isEditable()
                        && String.valueOf(field.getName()).startsWith("field.")
                        && field.isEnabled());
    }

    /** All forms, each with its fields found anew, for a field may come and go with what is typed in another. */
    private void eachField(java.util.function.BiConsumer<String, String> work) {
        stage = Stage.open(window, Locale.UK, Stage.ofAllKinds());
        window.paintNoMore();
        stage.eachForm(state -> {
            List<String> names = stage.ask(() ->
                    typed(stage.form()).stream().map(JTextComponent::getName).toList());
            for (String name : names) {
                work.accept(state, name);
            }
        });
    }

    private JTextComponent field(String name) {
        return stage.ask(() -> typed(stage.form()).stream()
                .filter(field -> field.getName().equals(name))
                .findFirst()
                .orElseThrow());
    }

    /** As if it were typed over, and Enter pressed. */
    private void type(JTextComponent field, String text) {
        stage.run(() -> {
            field.requestFocusInWindow();
            field.setText(text);
            if (field instanceof JTextField line) {
                line.postActionEvent();
            }
        });
    }

    private void escape(JTextComponent field) {
        stage.run(() -> field.dispatchEvent(new KeyEvent(
                field,
                KeyEvent.KEY_PRESSED,
                System.currentTimeMillis(),
                0,
                KeyEvent.VK_ESCAPE,
                KeyEvent.CHAR_UNDEFINED)));
    }

    private String reason(String field) {
        return stage.ask(() ->
                Stage.all(stage.form(), JTextComponent.class, text -> (field + ".reason").equals(text.getName()))
                        .stream()
                        .map(JTextComponent::getText)
                        .findFirst()
                        .orElse(""));
    }

    private boolean marked(JTextComponent field) {
        return stage.ask(() -> "error".equals(field.getClientProperty("JComponent.outline")));
    }

    @Test
    void badInputInEveryFieldIsMarkedThereWithItsReasonAndNeverLost() {
        Set<String> checked = new TreeSet<>();
        Map<String, Integer> met = new HashMap<>();
        eachField((state, name) -> {
            String where = state + ", " + name;
            int refused = 0;
            List<String> nonsense = nonsense(met.merge(name, 1, Integer::sum));
            for (String bad : nonsense) {
                refused += refuses(where, name, bad) ? 1 : 0;
            }
            assertThat(refused).as(where + ": takes all words or no nonsense").isIn(0, nonsense.size());
            if (refused > 0) {
                checked.add(name);
            }
        });
        assertThat(checked).contains("field.block.amount", "field.warp.sett", "field.yarn.colour", "field.habits.ease");
        assertThat(checked).hasSizeGreaterThan(25);
    }

    /** All of it where a field is met first; where another form has the same one, some of it by turns. */
    private static List<String> nonsense(int times) {
        int next = times % NONSENSE.size();
        return times == 1 ? NONSENSE : NONSENSE.subList(next, next + 1);
    }

    /** @return whether it did, with all that belongs to it; else it took the text as it stands */
    private boolean refuses(String where, String name, String bad) {
        JTextComponent field = field(name);
        String before = stage.ask(field::getText);
        Piece piece = stage.ask(() -> stage.session().piece());
        type(field, bad);
        String shown = stage.ask(field::getText);
        boolean took = stage.ask(() -> !stage.session().piece().equals(piece));
        if (took) {
            assertThat(shown).as(where).isEqualTo(bad);
            assertThat(marked(field)).as(where).isFalse();
            stage.run(() -> stage.session().undo());
            assertThat(stage.ask(() -> stage.session().piece())).isEqualTo(piece);
            return false;
        }
        if (field instanceof JTextField) {
            assertThat(reason(name)).as(where + " “" + bad + "”").endsWith(".").hasSizeGreaterThan(20);
        } else {
            waitForReason(name);
        }
        assertThat(marked(field)).as(where).isTrue();
        assertThat(shown).as(where).isEqualTo(bad);
        assertThat(stage.ask(() -> stage.session().plan().piece())).as(where).isEqualTo(piece);
        escape(field);
        String after = stage.ask(field::getText);
        assertThat(after).as(where + ", after Escape").isEqualTo(before);
        assertThat(marked(field)).as(where).isFalse();
        assertThat(reason(name)).as(where).isEmpty();
        assertThat(stage.ask(() -> stage.session().piece())).as(where).isEqualTo(piece);
        return true;
    }

    private void waitForReason(String name) {
        Pause.pause(new Condition("the reason at " + name) {
            @Override
            public boolean test() {
                return !reason(name).isEmpty();
            }
        });
    }

    @Test
    void goodInputInEveryFieldChangesThePieceInOneStep() {
        List<String> unchanged = new ArrayList<>();
        eachField((state, name) -> {
            Piece piece = stage.ask(() -> stage.session().piece());
            int steps = stage.ask(() -> stage.session().history().done());
            if (SENSE.stream().noneMatch(good -> takes(field(name), good, piece))) {
                unchanged.add(state + ", " + name);
                return;
            }
            assertThat(stage.ask(() -> stage.session().history().done())).isEqualTo(steps + 1);
            stage.run(() -> stage.session().undo());
            assertThat(stage.ask(() -> stage.session().piece())).as(name).isEqualTo(piece);
        });
        assertThat(unchanged).isEmpty();
    }

    private boolean takes(JTextComponent field, String good, Piece before) {
        type(field, good);
        boolean changed = stage.ask(() -> !stage.session().piece().equals(before));
        if (!changed) {
            escape(field);
        }
        return changed;
    }

    /** Every field says in a sentence what it does, to those who point at it and to those who hear it. */
    @Test
    void everyFieldSaysWhatItDoes() {
        stage = Stage.open(window, Locale.UK, Stage.ofAllKinds());
        window.paintNoMore();
        List<String> silent = new ArrayList<>();
        stage.eachForm(state -> stage.run(() -> {
            for (JComponent field : Stage.all(stage.form(), JComponent.class, EveryFieldIT::isField)) {
                String tip = field.getToolTipText();
                boolean says = tip != null
                        && tip.split("\\s+").length > 3
                        && tip.equals(field.getAccessibleContext().getAccessibleDescription());
                if (!says) {
                    silent.add(state + ", " + field.getName() + ": " + tip);
                }
            }
        }));
        assertThat(silent).isEmpty();
    }

    private static boolean isField(JComponent component) {
        boolean kind = component instanceof JTextComponent text && text.isEditable()
                || component instanceof JComboBox
                || component instanceof JCheckBox
                || component instanceof JRadioButton;
        return kind && String.valueOf(component.getName()).startsWith("field.");
    }
}

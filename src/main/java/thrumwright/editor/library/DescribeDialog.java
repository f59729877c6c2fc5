package thrumwright.editor.library;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.Typed;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Difficulty;
import thrumwright.piece.Structure;

/** Asks for a structure's texts. */
final class DescribeDialog {
    private final Texts texts;
    private final Structure draft;
    private final Modal<Structure> modal;
    private final JTextField name = new JTextField(32);
    private final JTextArea use = area(3);
    private final JTextArea needs = area(2);
    private final JComboBox<String> difficulty = new JComboBox<>();
    private final JTextField goodFor = new JTextField(32);
    private final JTextField source = new JTextField(32);
    private final Prose missing = new Prose("");
    private final JButton keep;

    DescribeDialog(Component parent, Texts texts, Structure draft) {
        this.texts = texts;
        this.draft = draft;
        this.modal = new Modal<>(parent, "describeStructure", texts.say("describe.title"));
        this.keep = new JButton(texts.say("describe.keep"));
        build();
    }

    private static JTextArea area(int rows) {
        JTextArea area = new JTextArea(rows, 32);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    private void build() {
        difficulty.addItem(texts.say("difficulty.none"));
        for (Difficulty each : Difficulty.values()) {
            difficulty.addItem(texts.name("difficulty", each));
        }
        fill();
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 2, hidemode 3", "[right]8[grow, fill, 300:380]"));
        JLabel title = new JLabel(texts.say("describe.heading"));
        title.setFont(UIManager.getFont("h3.font"));
        panel.add(title, "span 2, left");
        field(panel, "describe.name", name, name);
        field(panel, "describe.use", use, new JScrollPane(use));
        field(panel, "describe.needs", needs, new JScrollPane(needs));
        field(panel, "describe.difficulty", difficulty, difficulty);
        field(panel, "describe.good-for", goodFor, goodFor);
        field(panel, "describe.source", source, source);
        goodFor.setToolTipText(texts.say("describe.good-for.tip"));
        missing.setForeground(UIManager.getColor("Thrumwright.reason"));
        panel.add(missing, "skip 1, growx, wmin 200");
        keep.setName("keepStructure");
        keep.addActionListener(event -> done());
        JButton cancel = new JButton(texts.say("begin.cancel"));
        cancel.addActionListener(event -> modal.close());
        panel.add(cancel, "span 2, split 2, right, gaptop 8");
        panel.add(keep);
        look();
        modal.fill(panel, keep);
    }

    private void fill() {
        name.setText(draft.name());
        use.setText(draft.use());
        needs.setText(draft.needs());
        difficulty.setSelectedIndex(
                draft.difficulty().map(each -> each.ordinal() + 1).orElse(0));
        goodFor.setText(String.join(", ", draft.goodFor()));
        source.setText(draft.source());
        for (JTextComponent each : List.of(name, use, source)) {
            Typed.in(each, this::look);
        }
    }

    private void field(JPanel panel, String key, JComponent field, JComponent shown) {
        JLabel label = new JLabel(texts.say(key));
        label.setLabelFor(field);
        field.setName(key);
        panel.add(label, "aligny top, gaptop 4");
        panel.add(shown, "growx");
    }

    /** What is still missing, in a sentence. */
    private void look() {
        String key = name.getText().isBlank()
                ? "describe.no-name"
                : use.getText().isBlank() ? "describe.no-use" : source.getText().isBlank() ? "describe.no-source" : "";
        missing.setText(key.isEmpty() ? "" : texts.say(key));
        missing.setVisible(!key.isEmpty());
        keep.setEnabled(key.isEmpty());
    }

    private void done() {
        List<String> words = new ArrayList<>(Stream.of(goodFor.getText().split("[,;\n]"))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList());
        int chosen = difficulty.getSelectedIndex();
        modal.answer(new Structure(
                draft.id(),
                name.getText().strip(),
                use.getText().strip(),
                needs.getText().strip(),
                chosen == 0 ? Optional.empty() : Optional.of(Difficulty.values()[chosen - 1]),
                draft.withoutPosts(),
                words,
                source.getText().strip(),
                draft.end()));
    }

    Optional<Structure> ask() {
        return modal.ask();
    }
}

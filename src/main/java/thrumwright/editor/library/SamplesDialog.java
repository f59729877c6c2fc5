package thrumwright.editor.library;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.drawing.Palette;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.sheet.SampleWarp;

/** Asks which edges a sample warp is to try, one above the other. */
final class SamplesDialog {
    private final Texts texts;
    private final Piece piece;
    private final Modal<StructureQuestions.Samples> modal;
    private final StructureChooser chooser;
    /** From above to below, as on the loom. */
    private final DefaultListModel<String> names = new DefaultListModel<>();

    private final List<Structure> edges = new ArrayList<>();
    private final JList<String> list = new JList<>(names);
    private final JTextField width = new JTextField(8);
    private final Prose reason = new Prose("").in("Thrumwright.reason");
    private final JButton add;
    private final JButton away;
    private final JButton begin;

    SamplesDialog(Component parent, Texts texts, Palette palette, List<Structure> structures, Piece piece) {
        this.texts = texts;
        this.piece = piece;
        this.modal = new Modal<>(parent, "samples", texts.say("samples.title"));
        this.add = button("samples.add", "addSample", this::put);
        this.away = button("samples.away", "takeSampleAway", this::takeAway);
        this.begin = button("samples.begin", "beginSamples", this::done);
        this.chooser = new StructureChooser(texts, palette, tried(piece), Place.START, this::follow);
        chooser.setStructures(structures.stream()
                .filter(structure -> SampleWarp.canStand(structure.end()))
                .toList());
        build();
    }

    /** On the loom with as much free warp as an edge needs. */
    private static Piece tried(Piece piece) {
        return piece.withLoom(piece.loom().leavingAsUsual());
    }

    private JButton button(String key, String name, Runnable work) {
        JButton button = new JButton(texts.say(key));
        button.setName(name);
        button.addActionListener(event -> work.run());
        return button;
    }

    private void build() {
        list.setName("samples.list");
        list.setVisibleRowCount(4);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(texts.say("samples.list"));
        list.addListSelectionListener(event -> follow());
        width.setName("samples.width");
        width.setText(SampleWarp.usualWidth(piece.habits().units()).text());
        JLabel wide = new JLabel(texts.say("samples.width"));
        wide.setLabelFor(width);
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fill, hidemode 3", "[grow, fill]"));
        JLabel title = new JLabel(texts.say("samples.heading"));
        title.setFont(UIManager.getFont("h3.font"));
        panel.add(title);
        panel.add(chooser, "grow, push");
        panel.add(add, "growx 0");
        panel.add(new JScrollPane(list), "hmin 60");
        panel.add(reason, "wmin 60");
        panel.add(buttons(wide));
        follow();
        modal.fill(panel, begin);
        chooser.takeKeyboard();
    }

    private JPanel buttons(JLabel wide) {
        JButton cancel = new JButton(texts.say("begin.cancel"));
        cancel.addActionListener(event -> modal.close());
        JPanel buttons = new JPanel(new MigLayout("insets 4 0 0 0, fillx", "[]16[][]push[][]"));
        buttons.add(away);
        buttons.add(wide);
        buttons.add(width);
        buttons.add(cancel);
        buttons.add(begin);
        return buttons;
    }

    private void put() {
        chooser.selected().ifPresent(structure -> {
            edges.add(structure);
            fill(0);
        });
    }

    private void takeAway() {
        int chosen = list.getSelectedIndex();
        edges.remove(edges.size() - 1 - chosen);
        fill(Math.min(chosen, edges.size() - 1));
    }

    private void fill(int selected) {
        names.clear();
        edges.forEach(edge -> names.add(0, edge.name()));
        list.setSelectedIndex(selected);
        follow();
    }

    private void follow() {
        if (chooser == null) {
            return;
        }
        add.setEnabled(chooser.selected().isPresent() && edges.size() < SampleWarp.MOST);
        away.setEnabled(list.getSelectedIndex() >= 0);
        begin.setEnabled(edges.size() > 1);
        reason.setVisible(!reason.getText().isEmpty());
    }

    private void done() {
        try {
            Length typed = Length.parse(width.getText(), piece.habits().units().usual());
            modal.answer(new StructureQuestions.Samples(
                    edges, piece.withWarp(piece.warp().withWidth(typed))));
        } catch (BadMeasure refused) {
            width.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
            reason.setText(refused.getMessage());
            follow();
            width.requestFocusInWindow();
        }
    }

    Optional<StructureQuestions.Samples> ask() {
        return modal.ask();
    }
}

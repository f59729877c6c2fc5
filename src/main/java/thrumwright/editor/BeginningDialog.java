package thrumwright.editor;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Structure;

/** Asks how a new piece begins: with which structure, in which units. */
final class BeginningDialog {
    private final Texts texts;
    private final JDialog dialog;
    private final JList<Structure> list;
    private final Prose about = new Prose("");
    private final JRadioButton metric;
    private final JRadioButton inches;
    private Optional<Beginning> answer = Optional.empty();

    BeginningDialog(Component parent, Texts texts, List<Structure> structures) {
        this.texts = texts;
        this.dialog = new JDialog(
                SwingUtilities.getWindowAncestor(parent) == null && parent instanceof java.awt.Window window
                        ? window
                        : SwingUtilities.getWindowAncestor(parent),
                texts.say("begin.title"),
                JDialog.ModalityType.APPLICATION_MODAL);
        this.list = new JList<>(structures.toArray(Structure[]::new));
        this.metric = new JRadioButton(texts.say("units.metric"), true);
        this.inches = new JRadioButton(texts.say("units.inches"));
        dialog.setName("begin");
        build();
    }

    private void build() {
        list.setName("structures");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Named());
        list.addListSelectionListener(event -> describe());
        list.setSelectedIndex(0);
        ButtonGroup units = new ButtonGroup();
        units.add(metric);
        units.add(inches);
        JButton begin = new JButton(texts.say("begin.begin"));
        begin.setName("beginWithIt");
        begin.addActionListener(event -> done(Optional.ofNullable(list.getSelectedValue())));
        JButton empty = new JButton(texts.say("begin.empty"));
        empty.setName("beginEmpty");
        empty.addActionListener(event -> done(Optional.empty()));
        JButton cancel = new JButton(texts.say("begin.cancel"));
        cancel.addActionListener(event -> dialog.dispose());
        JPanel panel =
                new JPanel(new MigLayout("insets 16, wrap 2", "[240:280][grow, fill, 300:360]", "[][grow, fill][]"));
        JLabel title = new JLabel(texts.say("begin.heading"));
        title.setFont(UIManager.getFont("h3.font"));
        panel.add(title, "span 2");
        panel.add(new JScrollPane(list), "grow, hmin 260");
        panel.add(about, "growx, aligny top, wmin 300");
        panel.add(new JLabel(texts.say("begin.units")), "span 2, split 3");
        panel.add(metric);
        panel.add(inches);
        panel.add(empty, "span 2, split 3, gaptop 10");
        panel.add(cancel, "gapbefore push");
        panel.add(begin);
        dialog.setContentPane(panel);
        dialog.getRootPane().setDefaultButton(begin);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JPanel.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setMinimumSize(new Dimension(640, 420));
        dialog.setLocationRelativeTo(dialog.getOwner());
    }

    private static final class Named extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> all, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(all, value, index, selected, focused);
            setText(((Structure) value).name());
            setBorder(javax.swing.BorderFactory.createEmptyBorder(3, 8, 3, 8));
            return this;
        }
    }

    private void describe() {
        Structure structure = list.getSelectedValue();
        if (structure != null) {
            about.setText(texts.say(
                    "begin.about",
                    java.util.Map.of(
                            "use", structure.use(), "needs", structure.needs(), "source", structure.source())));
        }
    }

    private void done(Optional<Structure> structure) {
        answer = Optional.of(new Beginning(structure, inches.isSelected() ? UnitSystem.INCHES : UnitSystem.METRIC));
        dialog.dispose();
    }

    Optional<Beginning> ask() {
        dialog.setVisible(true);
        return answer;
    }
}

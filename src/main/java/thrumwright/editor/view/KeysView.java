package thrumwright.editor.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Typed;
import thrumwright.editor.text.KeyLine;
import thrumwright.editor.text.Texts;

/** All commands with their keys and what they do; the words that are typed above them leave those that have them. */
public final class KeysView {
    private static final int[] WIDTHS = {90, 190, 170, 420};

    private final Texts texts;
    private final List<KeyLine> all;
    private final KeyModel model;
    private final JTable table;
    private final JTextField search = new JTextField(24);
    private final JLabel count = new JLabel();
    private final JComponent whole = new JPanel(new BorderLayout());

    public KeysView(Texts texts, List<KeyLine> all) {
        this.texts = texts;
        this.all = List.copyOf(all);
        this.model = new KeyModel(texts);
        this.table = new Table(model);
        table.setName("keys");
        table.getAccessibleContext().setAccessibleName(texts.say("keys.title"));
        ReadTables.style(table);
        for (int i = 0; i < WIDTHS.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(WIDTHS[i]);
        }
        Typed.in(search, this::find);
        search.registerKeyboardAction(event -> enter(), KeyStroke.getKeyStroke("DOWN"), JComponent.WHEN_FOCUSED);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        whole.add(top(), BorderLayout.NORTH);
        whole.add(scroll);
        find();
    }

    private JComponent top() {
        JPanel top = new JPanel(new MigLayout("insets 10 12 10 12, fillx", "[][grow, fill][]"));
        JLabel label = new JLabel(texts.say("keys.search"));
        label.setLabelFor(search);
        search.setName("keys.search");
        search.setToolTipText(texts.say("keys.search.tip"));
        count.setName("keys.count");
        top.add(label);
        top.add(search);
        top.add(count);
        return top;
    }

    public JComponent component() {
        return whole;
    }

    /** Where typing begins. */
    public JTextField search() {
        return search;
    }

    private void find() {
        model.show(all.stream().filter(line -> line.has(search.getText())).toList());
        count.setText(texts.say("keys.count", Map.of("count", model.getRowCount())));
    }

    private void enter() {
        if (model.getRowCount() > 0) {
            table.requestFocusInWindow();
            table.changeSelection(Math.max(0, table.getSelectedRow()), 0, false, false);
        }
    }

    /** Whatever of a cell has no room is told by a tip. */
    private static final class Table extends JTable {
        private static final long serialVersionUID = 1L;

        Table(KeyModel model) {
            super(model);
        }

        @Override
        public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
            Component cell = super.prepareRenderer(renderer, row, column);
            if (cell instanceof JComponent part) {
                String text = String.valueOf(getValueAt(row, column));
                part.setToolTipText(text.isEmpty() ? null : text);
            }
            return cell;
        }
    }

    private static final class KeyModel extends LineModel<KeyLine> {
        private static final long serialVersionUID = 1L;

        KeyModel(Texts texts) {
            super(texts, List.of("keys.group", "keys.command", "keys.keys", "keys.does"));
        }

        @Override
        Object value(KeyLine line, int column) {
            return switch (column) {
                case 0 -> line.group();
                case 1 -> line.command().text();
                case 2 -> line.keys();
                default -> line.command().tip();
            };
        }
    }
}

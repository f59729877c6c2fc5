package thrumwright.editor.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.MouseEvent;
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
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.text.KeyLine;
import thrumwright.editor.text.Texts;

/** All commands with their keys and what they do; the words that are typed above them leave those that have them. */
public final class KeysView {
    private static final int[] WIDTHS = {90, 190, 170, 420};

    private final Texts texts;
    private final List<KeyLine> all;
    private final Model model;
    private final JTable table;
    private final JTextField search = new JTextField(24);
    private final JLabel count = new JLabel();
    private final JComponent whole = new JPanel(new BorderLayout());

    public KeysView(Texts texts, List<KeyLine> all) {
        this.texts = texts;
        this.all = List.copyOf(all);
        this.model = new Model(texts);
        this.table = new Table(model);
        table.setName("keys");
        table.getAccessibleContext().setAccessibleName(texts.say("keys.title"));
        ReadTables.style(table);
        for (int i = 0; i < WIDTHS.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(WIDTHS[i]);
        }
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                find();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                find();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // Only attributes change so, and this text has none.
            }
        });
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

        Table(Model model) {
            super(model);
        }

        @Override
        public String getToolTipText(MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            int column = columnAtPoint(event.getPoint());
            if (row < 0 || column < 0) {
                return null;
            }
            String text = String.valueOf(getValueAt(row, column));
            return text.isEmpty() ? null : text;
        }

        @Override
        public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
            Component cell = super.prepareRenderer(renderer, row, column);
            if (cell instanceof JComponent part) {
                part.setToolTipText(String.valueOf(getValueAt(row, column)));
            }
            return cell;
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private static final List<String> COLUMNS = List.of("group", "command", "keys", "does");

        private final transient Texts texts;
        private transient List<KeyLine> lines = List.of();

        Model(Texts texts) {
            this.texts = texts;
        }

        void show(List<KeyLine> other) {
            lines = other;
            fireTableDataChanged();
        }

        @Override
        public int getRowCount() {
            return lines.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.say("keys." + COLUMNS.get(column));
        }

        @Override
        public Object getValueAt(int row, int column) {
            KeyLine line = lines.get(row);
            return switch (column) {
                case 0 -> line.group();
                case 1 -> line.command().text();
                case 2 -> line.keys();
                default -> line.command().tip();
            };
        }
    }
}

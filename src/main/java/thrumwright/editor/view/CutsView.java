package thrumwright.editor.view;

import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.text.Texts;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.StepSheet;

/** The cut list; choosing a line selects its block. */
public final class CutsView {
    private final Session session;
    private final Model model;
    private final Texts texts;
    private final JTable table;
    private final JScrollPane scroll;

    public CutsView(Session session, Texts texts) {
        this.session = session;
        this.texts = texts;
        this.model = new Model(texts);
        this.table = new JTable(model);
        this.scroll = new JScrollPane(table);
        table.setName("cuts");
        table.getAccessibleContext().setAccessibleName(texts.say("tab.cuts"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.setRowHeight(24);
        table.setDefaultRenderer(CutLine.class, new OfYarn());
        int[] widths = {50, 140, 70, 170, 110, 80};
        for (int i = 0; i < widths.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(widths[i]);
        }
        table.getSelectionModel().addListSelectionListener(event -> choose());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        LiveView.keep(session, scroll, this::refresh);
    }

    public JComponent component() {
        return scroll;
    }

    private void refresh() {
        model.show(StepSheet.of(session.plan(), texts.locale()).cuts());
    }

    private void choose() {
        int row = table.getSelectedRow();
        if (row >= 0 && row < model.lines.size()) {
            CutLine line = model.lines.get(row);
            session.select(Selection.of(line.place(), line.blockId()));
        }
    }

    private static final class OfYarn extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable all, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(all, value, selected, focused, row, column);
            CutLine line = (CutLine) value;
            setText(line.what());
            setIcon(line.yarn().map(yarn -> new Swatch(yarn.colour())).orElse(null));
            return this;
        }
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private static final List<String> COLUMNS = List.of("step", "use", "end", "yarn", "cut", "widths");

        private final transient Texts texts;
        private transient List<CutLine> lines = List.of();

        Model(Texts texts) {
            this.texts = texts;
        }

        void show(List<CutLine> other) {
            if (!other.equals(lines)) {
                lines = other;
                fireTableDataChanged();
            }
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
            return texts.say("cuts." + COLUMNS.get(column));
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column == 3 ? CutLine.class : String.class;
        }

        @Override
        public Object getValueAt(int row, int column) {
            CutLine line = lines.get(row);
            return switch (column) {
                case 0 -> String.valueOf(line.step());
                case 1 -> line.use();
                case 2 -> texts.name("end", line.place());
                case 3 -> line;
                case 4 -> (line.count() == 1 ? "" : line.count() + " × ") + line.length();
                default -> line.widths();
            };
        }
    }
}

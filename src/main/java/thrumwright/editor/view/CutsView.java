package thrumwright.editor.view;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.sheet.CutLine;
import thrumwright.sheet.StepSheet;
import thrumwright.sheet.YarnLine;

/**
 * The cut list, and below it what each yarn comes to. Lines and blocks are selected together: here and on the canvas.
 */
public final class CutsView {
    private final Session session;
    private final CutModel model;
    private final Texts texts;
    private final JTable table;
    private final JComponent column = new Column(new MigLayout("insets 0, wrap 2, fillx, gapy 0", "[]8[grow, fill]"));
    private final JComponent whole = new JPanel(new BorderLayout());
    private List<YarnLine> totals = List.of();
    private String note = "";
    private final Quiet quiet = new Quiet();

    public CutsView(Session session, Texts texts) {
        this.session = session;
        this.texts = texts;
        this.model = new CutModel(texts);
        this.table = new JTable(model);
        ReadTables.style(table);
        table.setName("cuts");
        table.getAccessibleContext().setAccessibleName(texts.say("tab.cuts"));
        table.setDefaultRenderer(CutLine.class, new OfYarn());
        int[] widths = {50, 140, 70, 170, 110, 80};
        for (int i = 0; i < widths.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(widths[i]);
        }
        ReadTables.toTheRight(table, 0, 4, 5);
        table.getSelectionModel().addListSelectionListener(event -> choose());
        column.add(table, "span 2, growx, wmin 0");
        whole.add(table.getTableHeader(), BorderLayout.NORTH);
        whole.add(Column.scrolling(column));
        LiveView.keep(session, whole, this::refresh, this::follow);
    }

    public JComponent component() {
        return whole;
    }

    private void refresh() {
        StepSheet sheet = StepSheet.of(session.plan(), texts.locale());
        quiet.during(() -> model.show(sheet.cuts()));
        if (!sheet.yarns().equals(totals) || !sheet.yarnNote().equals(note)) {
            totals = sheet.yarns();
            note = sheet.yarnNote();
            fill();
        }
    }

    private void fill() {
        // the table stays, since it may have the keyboard
        for (Component below : column.getComponents()) {
            if (below != table) {
                column.remove(below);
            }
        }
        JLabel title = new JLabel(texts.say("cuts.yarns"));
        title.setFont(UIManager.getFont("semibold.font"));
        column.add(title, "span 2, gap 10 10 10 3");
        column.add(new Prose(note).in("Thrumwright.quiet"), "span 2, growx, wmin 60, gap 10 10 0 3");
        for (YarnLine line : totals) {
            JComponent colour = line.yarn()
                    .<JComponent>map(yarn -> new UnheardPicture(new Swatch(yarn.colour())))
                    .orElseGet(JLabel::new);
            column.add(colour, "aligny top, gap 10 0 3 0");
            column.add(new Prose(line.text()), "wmin 60, gap 0 10 0 3");
        }
        column.revalidate();
        column.repaint();
    }

    private void choose() {
        int lead = table.getSelectionModel().getLeadSelectionIndex();
        if (quiet.now() || lead < 0 || lead >= model.lines().size() || !table.isRowSelected(lead)) {
            return;
        }
        Place place = model.lines().get(lead).place();
        List<String> ids = new ArrayList<>();
        for (int row : table.getSelectedRows()) {
            if (row != lead && model.lines().get(row).place() == place) {
                ids.add(model.lines().get(row).blockId());
            }
        }
        ids.add(model.lines().get(lead).blockId());
        // what is sewn to the finished piece belongs to no block
        ids.removeIf(String::isEmpty);
        session.select(new Selection(place, ids));
    }

    /** Selects the lines of the selected blocks, and no others. */
    private void follow() {
        Selection selection = session.selection();
        List<Integer> wanted = IntStream.range(0, model.lines().size())
                .filter(row -> selection.has(
                        model.lines().get(row).place(), model.lines().get(row).blockId()))
                .boxed()
                .toList();
        List<Integer> now = IntStream.of(table.getSelectedRows()).boxed().toList();
        if (wanted.equals(now)) {
            return;
        }
        quiet.during(() -> {
            table.clearSelection();
            wanted.forEach(row -> table.addRowSelectionInterval(row, row));
        });
        if (!wanted.isEmpty()) {
            table.scrollRectToVisible(table.getCellRect(wanted.get(0), 0, true));
        }
    }

    private static final class OfYarn extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable all, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(all, value, selected, focused, row, column);
            CutLine line = (CutLine) value;
            setText(line.whatAndStrands());
            setToolTipText(line.strands().isEmpty() ? null : line.shared());
            setIcon(line.yarn().map(yarn -> new Swatch(yarn.colour())).orElse(null));
            return this;
        }
    }

    private static final class CutModel extends LineModel<CutLine> {
        private static final long serialVersionUID = 1L;

        private final transient Texts texts;

        CutModel(Texts texts) {
            super(texts, List.of("cuts.step", "cuts.use", "cuts.end", "cuts.yarn", "cuts.cut", "cuts.widths"));
            this.texts = texts;
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column == 3 ? CutLine.class : String.class;
        }

        @Override
        Object value(CutLine line, int column) {
            return switch (column) {
                case 0 -> String.valueOf(line.step());
                case 1 -> line.use();
                case 2 -> line.sewnOn() ? "" : texts.name("end", line.place());
                case 3 -> line;
                case 4 -> (line.count() == 1 ? "" : line.count() + " × ") + line.length();
                default -> line.widths();
            };
        }
    }
}

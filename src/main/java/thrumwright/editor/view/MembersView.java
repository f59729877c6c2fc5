package thrumwright.editor.view;

import java.awt.Component;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.ClassMember;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.MemberNames;

/** The looms of a class, one under the other; choosing a line selects its loom. What is a loom's own stands out. */
public final class MembersView {
    private final ClassSession session;
    private final MemberModel model;
    private final JTable table;
    private final JScrollPane scroll;
    private final Quiet quiet = new Quiet();

    public MembersView(ClassSession session, Texts texts) {
        this.session = session;
        this.model = new MemberModel(texts);
        this.table = new JTable(model);
        this.scroll = new JScrollPane(table);
        table.setName("members");
        table.getAccessibleContext().setAccessibleName(texts.say("class.looms"));
        ReadTables.style(table);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setFillsViewportHeight(true);
        table.setDefaultRenderer(String.class, new OwnStandsOut());
        int[] widths = {36, 130, 190, 66, 66, 50, 124, 92};
        for (int i = 0; i < widths.length; i++) {
            table.getColumnModel().getColumn(i).setPreferredWidth(widths[i]);
        }
        table.getSelectionModel().addListSelectionListener(event -> choose());
        session.listen(this::refresh);
        refresh();
    }

    public JComponent component() {
        return scroll;
    }

    private void refresh() {
        quiet.during(this::show);
    }

    private void show() {
        model.show(session.plan());
        int row = session.selected();
        table.setRowSelectionInterval(row, row);
        table.scrollRectToVisible(table.getCellRect(row, 0, true));
    }

    private void choose() {
        int row = table.getSelectedRow();
        if (!quiet.now() && row >= 0) {
            session.select(row);
        }
    }

    private final class OwnStandsOut extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable all, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(all, value, selected, focused, row, column);
            ClassMember member = session.set().members().get(row);
            setFont(getFont().deriveFont(own(member, column) ? Font.BOLD : Font.PLAIN));
            return this;
        }
    }

    private static boolean own(ClassMember member, int column) {
        return switch (column) {
            case 1 -> !member.name().isBlank();
            case 2 -> member.loom().isPresent();
            case 3 -> member.width().isPresent();
            case 4 -> member.sett().isPresent();
            case 6 -> member.posts().isPresent();
            case 7 -> member.open().isPresent();
            default -> false;
        };
    }

    private static final class MemberModel extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private static final List<String> COLUMNS =
                List.of("number", "name", "loom", "width", "sett", "ends", "posts", "open");

        private final transient Texts texts;
        private transient Optional<Members> members = Optional.empty();

        /** The looms of a class, and what they are called. */
        private record Members(ClassPlan plan, MemberNames names) {}

        MemberModel(Texts texts) {
            this.texts = texts;
        }

        void show(ClassPlan other) {
            if (members.filter(now -> now.plan() == other).isEmpty()) {
                int count = other.plans().size();
                boolean asMany = getRowCount() == count;
                members = Optional.of(new Members(other, MemberNames.of(other.set(), Locale.UK)));
                if (asMany) {
                    fireTableRowsUpdated(0, count - 1);
                } else {
                    fireTableDataChanged();
                }
            }
        }

        @Override
        public int getRowCount() {
            return members.map(all -> all.plan().plans().size()).orElse(0);
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.say("members." + COLUMNS.get(column));
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return String.class;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Members all = members.orElseThrow();
            Piece piece = all.plan().plans().get(row).piece();
            Shown shown = piece.shown();
            return switch (column) {
                case 0 -> String.valueOf(row + 1);
                case 1 -> all.names().name(row);
                case 2 -> piece.loom().name();
                case 3 -> shown.cut(piece.warp().nominalWidth());
                case 4 -> piece.shown().typed(piece.warp().sett().text());
                case 5 -> String.valueOf(piece.warp().ends());
                case 6 -> posts(piece.loom(), shown);
                default -> shown.height(piece.loom().open().mm());
            };
        }

        private String posts(Loom loom, Shown shown) {
            return loom.uprights()
                    .map(posts -> shown.height(posts.diameter().mm()) + ", "
                            + texts.say("members.gap") + " "
                            + shown.height(posts.gap().mm()))
                    .orElseGet(() -> texts.say("members.no-posts"));
        }
    }
}

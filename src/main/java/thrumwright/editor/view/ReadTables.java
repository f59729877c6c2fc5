package thrumwright.editor.view;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import thrumwright.editor.look.Pixels;

/** Tables that are read and chosen from, never typed into. */
final class ReadTables {
    private static final int ROW = 24;

    private ReadTables() {}

    /** Titles stand over what they are titles of; Tab leaves the table, as it does a list. */
    static void style(JTable table) {
        table.setRowHeight(Pixels.of(ROW));
        TableCellRenderer usual = table.getTableHeader().getDefaultRenderer();
        table.getTableHeader().setDefaultRenderer((all, value, selected, focused, row, column) -> {
            Component title = usual.getTableCellRendererComponent(all, value, selected, focused, row, column);
            if (title instanceof JLabel label) {
                label.setHorizontalAlignment(
                        all.getColumnModel().getColumn(column).getCellRenderer() == null
                                ? SwingConstants.LEADING
                                : SwingConstants.TRAILING);
            }
            return title;
        });
        table.getTableHeader().setReorderingAllowed(false);
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        for (String key : new String[] {"TAB", "shift TAB", "F2", "ESCAPE"}) {
            table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
        }
    }

    /** Numbers and measures end below one another. */
    static void toTheRight(JTable table, int... columns) {
        DefaultTableCellRenderer renderer = new DefaultTableCellRenderer();
        renderer.setHorizontalAlignment(SwingConstants.TRAILING);
        for (int column : columns) {
            table.getColumnModel().getColumn(column).setCellRenderer(renderer);
        }
    }
}

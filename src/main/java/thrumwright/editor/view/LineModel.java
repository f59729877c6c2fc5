package thrumwright.editor.view;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import thrumwright.editor.text.Texts;

/** A table of lines that are only read, with the titles of its columns from the bundle. */
abstract class LineModel<L> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final transient List<String> titles;
    private transient List<L> lines = List.of();

    /** @param titles keys of the columns' titles */
    LineModel(Texts texts, List<String> titles) {
        this.texts = texts;
        this.titles = titles;
    }

    /** Shows other lines; the same ones leave the table, and what is selected in it, alone. */
    final void show(List<L> other) {
        if (!other.equals(lines)) {
            lines = List.copyOf(other);
            fireTableDataChanged();
        }
    }

    final List<L> lines() {
        return lines;
    }

    /** What stands in a column of a line. */
    abstract Object value(L line, int column);

    @Override
    public final int getRowCount() {
        return lines.size();
    }

    @Override
    public final int getColumnCount() {
        return titles.size();
    }

    @Override
    public final String getColumnName(int column) {
        return texts.say(titles.get(column));
    }

    @Override
    public final Object getValueAt(int row, int column) {
        return value(lines.get(row), column);
    }
}

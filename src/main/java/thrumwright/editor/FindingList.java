package thrumwright.editor;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import thrumwright.editor.edit.Chosen;
import thrumwright.editor.edit.Session;
import thrumwright.measure.Phrases;
import thrumwright.plan.Finding;

/** What was found, the worst first; choosing a line chooses its block. */
final class FindingList extends JList<Finding> {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final transient Phrases phrases;
    private final DefaultListModel<Finding> lines = new DefaultListModel<>();
    private transient List<Finding> shown = List.of();

    FindingList(Session session, Phrases phrases) {
        this.session = session;
        this.phrases = phrases;
        setModel(lines);
        setName("findings");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getAccessibleContext().setAccessibleName(phrases.say("findings.name"));
        setCellRenderer(new Line());
        setVisibleRowCount(3);
        addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                choose();
            }
        });
        session.listen(this::refresh);
        refresh();
    }

    private void choose() {
        Finding finding = getSelectedValue();
        if (finding != null && finding.place().isPresent() && finding.blockId().isPresent()) {
            session.choose(Optional.of(
                    new Chosen(finding.place().get(), finding.blockId().get())));
        }
    }

    private void refresh() {
        List<Finding> found = session.plan().findings();
        if (!found.equals(shown)) {
            shown = found;
            lines.clear();
            lines.addAll(found);
        }
    }

    /** Severity as a word and a sign, then the sentence, over as many lines as it takes. */
    private final class Line extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            Finding finding = (Finding) value;
            int width = Math.max(200, list.getWidth() - 60);
            String text = Html.lines(
                    (int) Math.round(width * 0.75),
                    "<b>" + phrases.say("severity." + finding.severity()) + "</b> " + Html.escaped(finding.sentence()));
            return super.getListCellRendererComponent(list, text, index, selected, focused);
        }
    }
}

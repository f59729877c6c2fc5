package thrumwright.editor.view;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.RepairEdits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Following;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.words.FindingWords;
import thrumwright.plan.words.RepairWords;

/** What the weaver should know: choosing a finding selects its block, and a button does the one right thing about it. */
public final class FindingsView {
    private final Session session;
    private final Texts texts;
    private final RepairEdits repairs;
    private final Runnable takeOver;
    private final JComponent list = new FindingRows();
    private final JScrollPane scroll = Column.scrolling(list);
    private List<Offer> shown = List.of();
    private final Following counting;

    /** A finding as it is said, with what would mend it. */
    private record Offer(Finding finding, String sentence, List<Edit> repairs) {
        private List<String> names() {
            return repairs.stream().map(Edit::name).toList();
        }

        boolean looksLike(Offer other) {
            return RepairEdits.same(finding, other.finding)
                    && sentence.equals(other.sentence)
                    && names().equals(other.names());
        }
    }

    /**
     * @param takeOver commits the field that is being typed in
     * @param counted told how many findings there are whenever that may have changed
     */
    public FindingsView(Session session, Edits edits, Texts texts, Runnable takeOver, Consumer<Integer> counted) {
        this.session = session;
        this.texts = texts;
        this.repairs = new RepairEdits(edits, new RepairWords(texts.locale()));
        this.takeOver = takeOver;
        this.counting =
                new Following(() -> counted.accept(session.findings().all().size()));
        list.setName("findings");
        list.getAccessibleContext().setAccessibleName(texts.say("tab.findings"));
        onKey("UP", -1);
        onKey("DOWN", 1);
        session.listen(this::count);
        LiveView.keep(session, scroll, this::refresh);
        refresh();
    }

    /** The findings one under the other. */
    private static final class FindingRows extends Column {
        private static final long serialVersionUID = 1L;

        FindingRows() {
            super(new MigLayout("insets 0, wrap 1, gapy 0, fillx", "[grow, fill]"));
        }

        @Override
        public AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJPanel() {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public AccessibleRole getAccessibleRole() {
                        return AccessibleRole.LIST;
                    }
                };
            }
            return accessibleContext;
        }
    }

    public JComponent component() {
        return scroll;
    }

    /** The picture comes first. */
    private void count(Change change) {
        if (change == Change.PIECE) {
            counting.soon(session.isTrying());
        }
    }

    private void refresh() {
        List<Offer> offers = new ArrayList<>();
        FindingWords words = FindingWords.of(session.plan().piece(), texts.locale());
        for (Finding finding : session.findings().all()) {
            offers.add(new Offer(finding, words.say(finding), repairs.all(session.plan(), finding)));
        }
        if (!looksLike(offers) || list.getComponentCount() == 0) {
            shown = List.copyOf(offers);
            fill();
        }
    }

    private boolean looksLike(List<Offer> offers) {
        return offers.size() == shown.size()
                && IntStream.range(0, offers.size()).allMatch(i -> offers.get(i).looksLike(shown.get(i)));
    }

    private void fill() {
        int focused = focused();
        list.removeAll();
        for (Offer offer : shown) {
            Finding finding = offer.finding();
            Runnable go = () -> go(finding);
            list.add(
                    new FindingRow(
                            finding, offer.sentence(), offer.repairs(), texts, go, which -> mend(finding, which)),
                    "wmin 0");
        }
        if (shown.isEmpty()) {
            list.add(new Prose(texts.say("findings.none")), "wmin 60, gap 10 8 5 5");
        }
        list.revalidate();
        list.repaint();
        if (focused >= 0 && !shown.isEmpty()) {
            list.getComponent(Math.min(focused, shown.size() - 1)).requestFocusInWindow();
        }
    }

    private void go(Finding finding) {
        finding.place().ifPresent(place -> finding.blockId().ifPresent(id -> session.select(Selection.of(place, id))));
    }

    /**
     * The piece may have changed since, by what was still being typed.
     *
     * @param which of what can be done about it, from 0
     */
    private void mend(Finding finding, int which) {
        takeOver.run();
        session.findings().all().stream()
                .filter(now -> RepairEdits.same(now, finding))
                .findFirst()
                .flatMap(now ->
                        repairs.all(session.plan(), now).stream().skip(which).findFirst())
                .ifPresent(session::edit);
    }

    /** Which row has the keyboard, itself or its button; −1: none. */
    private int focused() {
        Component[] rows = list.getComponents();
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        for (int i = 0; i < rows.length; i++) {
            if (owner != null && SwingUtilities.isDescendingFrom(owner, rows[i])) {
                return i;
            }
        }
        return -1;
    }

    private void onKey(String key, int by) {
        list.registerKeyboardAction(
                event -> {
                    int to = focused() + by;
                    if (to >= 0 && to < list.getComponentCount()) {
                        list.getComponent(to).requestFocusInWindow();
                    }
                },
                KeyStroke.getKeyStroke(key),
                JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    }
}

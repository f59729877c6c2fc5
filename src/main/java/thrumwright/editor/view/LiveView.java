package thrumwright.editor.view;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Following;

/**
 * Keeps a view up to date while it can be seen, and only then. When the piece changes, the view follows in an event of its
 * own, so that a view with much to show keeps neither the canvas nor the next key waiting; while a gesture tries one thing after another,
 * it follows when that pauses.
 */
final class LiveView {
    private final Session session;
    private final JComponent component;
    private final Runnable note;
    private final Runnable refresh;
    private final Runnable choose;
    private boolean stale = true;
    private final Following following = new Following(this::now);

    private LiveView(Session session, JComponent component, Runnable note, Runnable refresh, Runnable choose) {
        this.session = session;
        this.component = component;
        this.note = note;
        this.refresh = refresh;
        this.choose = choose;
    }

    static void keep(Session session, JComponent component, Runnable refresh) {
        keep(session, component, refresh, () -> {});
    }

    /** @param choose shows which blocks are selected; runs after {@code refresh} and whenever others are selected */
    static void keep(Session session, JComponent component, Runnable refresh, Runnable choose) {
        keep(session, component, () -> {}, refresh, choose);
    }

    /**
     * As the other, for a view that must know how things stood at the very change.
     *
     * @param note runs at once when the piece changes; {@code refresh} follows
     */
    static void keep(Session session, JComponent component, Runnable note, Runnable refresh, Runnable choose) {
        LiveView view = new LiveView(session, component, note, refresh, choose);
        session.listen(view::changed);
        component.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                view.now();
            }
        });
    }

    private void changed(Change change) {
        if (change == Change.SELECTION && !following.isDue()) {
            now();
            return;
        }
        stale |= change != Change.SELECTION;
        if (!following.isDue()) {
            note.run();
        }
        following.soon(session.isTrying());
    }

    private void now() {
        if (!component.isShowing()) {
            return;
        }
        if (stale) {
            stale = false;
            refresh.run();
            component.repaint();
        }
        choose.run();
    }
}

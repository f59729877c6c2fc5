package thrumwright.editor.view;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Session;

/** Keeps a view up to date while it can be seen, and only then. */
final class LiveView {
    private final JComponent component;
    private final Runnable refresh;
    private boolean stale = true;

    private LiveView(JComponent component, Runnable refresh) {
        this.component = component;
        this.refresh = refresh;
    }

    static void keep(Session session, JComponent component, Runnable refresh) {
        LiveView view = new LiveView(component, refresh);
        session.listen(view::changed);
        component.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0) {
                view.now();
            }
        });
    }

    private void changed(Change change) {
        if (change != Change.SELECTION) {
            stale = true;
            now();
        }
    }

    private void now() {
        if (stale && component.isShowing()) {
            stale = false;
            refresh.run();
            component.repaint();
        }
    }
}

package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JScrollPane;

/** A panel and how it is filled, part after part from the top: making many fields takes a while the first time. */
final class Filling {
    private final FieldPanel panel;
    private final List<Runnable> parts = new ArrayList<>();

    Filling(FieldPanel panel) {
        this.panel = panel;
    }

    /** The panel, with as much in it as has been run of the parts. */
    FieldPanel panel() {
        return panel;
    }

    /** @param part adds some fields, below those of the parts before */
    Filling then(Runnable part) {
        parts.add(part);
        return this;
    }

    /**
     * All parts, each to be run once and in this order; then it is ready to be shown.
     *
     * @param scroll where it will be shown
     */
    List<Runnable> parts(JScrollPane scroll) {
        List<Runnable> all = new ArrayList<>(parts);
        all.add(() -> layOut(scroll.getViewport().getWidth()));
        return all;
    }

    /** So that there is less to do when it comes to be painted. */
    private void layOut(int width) {
        panel.setSize(width, panel.getPreferredSize().height);
        panel.doLayout();
    }

    /** The panel with all that belongs into it. */
    FieldPanel whole() {
        parts.forEach(Runnable::run);
        return panel;
    }
}

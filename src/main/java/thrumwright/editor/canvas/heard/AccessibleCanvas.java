package thrumwright.editor.canvas.heard;

import javax.accessibility.Accessible;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleSelection;
import javax.swing.JComponent;
import thrumwright.editor.canvas.painted.FirstStep;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Selection;

/** The canvas for those who can't see it: a list of blocks from the top to the bottom. */
public final class AccessibleCanvas extends JComponent.AccessibleJComponent implements AccessibleSelection {
    private static final long serialVersionUID = 1L;

    private final transient JComponent component;
    private final transient Surface canvas;

    /** @param component the canvas itself */
    public AccessibleCanvas(JComponent component, Surface canvas) {
        component.super();
        this.component = component;
        this.canvas = canvas;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST;
    }

    @Override
    public String getAccessibleName() {
        return canvas.texts().say("canvas.name");
    }

    @Override
    public String getAccessibleDescription() {
        String what = canvas.texts().say("canvas.description");
        return FirstStep.isAhead(canvas.map().picture().plan())
                ? canvas.texts().say("canvas.first") + " " + what
                : what;
    }

    @Override
    public int getAccessibleChildrenCount() {
        return canvas.map().spots().size();
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        if (index < 0 || index >= canvas.map().spots().size()) {
            return null;
        }
        BlockSpot spot = canvas.map().spots().get(index);
        return new AccessibleBlock(component, canvas, spot.place(), spot.id());
    }

    @Override
    public AccessibleSelection getAccessibleSelection() {
        return this;
    }

    private boolean selected(int index) {
        BlockSpot spot = canvas.map().spots().get(index);
        return canvas.session().selection().has(spot.place(), spot.id());
    }

    @Override
    public int getAccessibleSelectionCount() {
        return canvas.session().selection().ids().size();
    }

    @Override
    public Accessible getAccessibleSelection(int which) {
        int met = 0;
        for (int i = 0; i < getAccessibleChildrenCount(); i++) {
            if (selected(i) && met++ == which) {
                return getAccessibleChild(i);
            }
        }
        return null;
    }

    @Override
    public boolean isAccessibleChildSelected(int index) {
        return selected(index);
    }

    @Override
    public void addAccessibleSelection(int index) {
        BlockSpot spot = canvas.map().spots().get(index);
        canvas.session().select(Selection.of(spot.place(), spot.id()));
    }

    @Override
    public void removeAccessibleSelection(int index) {
        if (selected(index)) {
            clearAccessibleSelection();
        }
    }

    @Override
    public void clearAccessibleSelection() {
        canvas.session().select(Selection.none());
    }

    @Override
    public void selectAllAccessibleSelection() {
        addAccessibleSelection(0);
    }
}

package thrumwright.editor.canvas.heard;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import thrumwright.block.Row;
import thrumwright.editor.canvas.label.BlockWording;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Surface;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Place;
import thrumwright.plan.Work;

/** One block on the canvas, for those who can't see it. */
final class AccessibleBlock extends AccessiblePart {
    private final JComponent component;
    private final Surface canvas;
    private final Place place;
    private final String id;

    AccessibleBlock(JComponent component, Surface canvas, Place place, String id) {
        super(component);
        this.component = component;
        this.canvas = canvas;
        this.place = place;
        this.id = id;
        setAccessibleParent(canvas);
    }

    private Optional<BlockSpot> spot() {
        return canvas.map().spot(place, id);
    }

    private Optional<BlockWording> wording() {
        return spot().map(spot -> BlockWording.of(canvas.session().plan(), place, spot.plan(), canvas.texts()));
    }

    @Override
    public String getAccessibleName() {
        String where = canvas.texts().words().place(place);
        return wording()
                .map(wording -> canvas.texts().say("canvas.block", Map.of("block", wording.name(), "place", where)))
                .orElse("");
    }

    @Override
    public String getAccessibleDescription() {
        return wording().map(wording -> wording.spoken(canvas.texts())).orElse("");
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST_ITEM;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return spot().map(canvas.map().spots()::indexOf).orElse(-1);
    }

    @Override
    public int getAccessibleChildrenCount() {
        return getCurrentAccessibleValue().intValue();
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        return index < 0 || index >= getAccessibleChildrenCount()
                ? null
                : new AccessibleRow(component, canvas.texts(), this, this::work, index);
    }

    private Optional<Work> work() {
        return spot().flatMap(spot -> spot.plan().work());
    }

    /** The rows from the lowest; none of a block that takes no yarn. */
    private List<Row> rows() {
        return work().map(Work::rows).orElse(List.of());
    }

    @Override
    boolean selected() {
        return canvas.session().selection().has(place, id);
    }

    /** The number of its rows; 0 for what has none. */
    @Override
    public Number getCurrentAccessibleValue() {
        return rows().size();
    }

    @Override
    public Number getMinimumAccessibleValue() {
        return 0;
    }

    @Override
    public Number getMaximumAccessibleValue() {
        return thrumwright.block.Amount.MOST_ROWS;
    }

    @Override
    public Rectangle getBounds() {
        return spot().map(spot -> canvas.map().field(spot).getBounds()).orElse(new Rectangle());
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        int count = getAccessibleChildrenCount();
        int height = getBounds().height;
        return count == 0 || !contains(point)
                ? null
                : getAccessibleChild(Math.min(count - 1, (height - 1 - point.y) * count / height));
    }

    @Override
    public void requestFocus() {
        canvas.requestFocusInWindow();
        canvas.session().select(Selection.of(place, id));
    }
}

package thrumwright.editor.canvas;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.accessibility.AccessibleValue;
import thrumwright.editor.canvas.CanvasMap.Spot;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Place;

/** One block on the canvas, for those who can't see it. */
final class AccessibleBlock extends AccessibleContext implements Accessible, AccessibleComponent, AccessibleValue {
    private final PieceCanvas canvas;
    private final Place place;
    private final String id;

    AccessibleBlock(PieceCanvas canvas, Place place, String id) {
        this.canvas = canvas;
        this.place = place;
        this.id = id;
        setAccessibleParent(canvas);
    }

    private Optional<Spot> spot() {
        return canvas.map().spot(place, id);
    }

    private Optional<BlockWording> wording() {
        return spot().map(spot -> BlockWording.of(canvas.session().plan(), place, spot.plan(), canvas.texts()));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return wording()
                .map(wording -> canvas.texts()
                        .say(
                                "canvas.block",
                                Map.of(
                                        "block",
                                        wording.name(),
                                        "place",
                                        canvas.texts().words().place(place))))
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
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.SELECTABLE);
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.VISIBLE);
        if (canvas.isShowing()) {
            states.add(AccessibleState.SHOWING);
        }
        if (canvas.session().selection().has(place, id)) {
            states.add(AccessibleState.SELECTED);
        }
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return spot().map(canvas.map().spots()::indexOf).orElse(-1);
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int index) {
        return null;
    }

    @Override
    public Locale getLocale() {
        return canvas.getLocale();
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    @Override
    public AccessibleValue getAccessibleValue() {
        return this;
    }

    /** The number of its rows; 0 for what has none. */
    @Override
    public Number getCurrentAccessibleValue() {
        return spot().flatMap(spot -> spot.plan().work())
                .map(work -> work.rows().size())
                .orElse(0);
    }

    @Override
    public boolean setCurrentAccessibleValue(Number number) {
        return false;
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
        return spot().map(spot -> canvas.field(spot).getBounds()).orElse(new Rectangle());
    }

    @Override
    public boolean contains(Point point) {
        return new Rectangle(getSize()).contains(point);
    }

    @Override
    public Point getLocationOnScreen() {
        if (!canvas.isShowing()) {
            return null;
        }
        Point corner = canvas.getLocationOnScreen();
        Rectangle bounds = getBounds();
        return new Point(corner.x + bounds.x, corner.y + bounds.y);
    }

    @Override
    public Point getLocation() {
        return getBounds().getLocation();
    }

    @Override
    public Dimension getSize() {
        return getBounds().getSize();
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    @Override
    public boolean isFocusTraversable() {
        return true;
    }

    @Override
    public void requestFocus() {
        canvas.requestFocusInWindow();
        canvas.session().select(Selection.of(place, id));
    }

    @Override
    public Color getBackground() {
        return canvas.getBackground();
    }

    @Override
    public Color getForeground() {
        return canvas.getForeground();
    }

    @Override
    public Cursor getCursor() {
        return canvas.getCursor();
    }

    @Override
    public Font getFont() {
        return canvas.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return canvas.getFontMetrics(font);
    }

    @Override
    public boolean isEnabled() {
        return canvas.isEnabled();
    }

    @Override
    public boolean isVisible() {
        return canvas.isVisible();
    }

    @Override
    public boolean isShowing() {
        return canvas.isShowing();
    }

    @Override
    public void setBackground(Color colour) {
        // A block is drawn in its yarn's colour and in no other.
    }

    @Override
    public void setForeground(Color colour) {
        // A block is drawn in its yarn's colour and in no other.
    }

    @Override
    public void setCursor(Cursor cursor) {
        // The pointer belongs to the canvas.
    }

    @Override
    public void setFont(Font font) {
        // Labels have the window's font.
    }

    @Override
    public void setEnabled(boolean enabled) {
        // Blocks are always there to be selected.
    }

    @Override
    public void setVisible(boolean visible) {
        // Blocks are always there to be seen.
    }

    @Override
    public void setLocation(Point point) {
        // Blocks lie where the piece says.
    }

    @Override
    public void setBounds(Rectangle bounds) {
        // Blocks lie where the piece says.
    }

    @Override
    public void setSize(Dimension size) {
        // Blocks are as large as the piece says.
    }

    @Override
    public void addFocusListener(FocusListener listener) {
        canvas.addFocusListener(listener);
    }

    @Override
    public void removeFocusListener(FocusListener listener) {
        canvas.removeFocusListener(listener);
    }
}

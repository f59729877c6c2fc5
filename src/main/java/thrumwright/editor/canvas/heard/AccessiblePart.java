package thrumwright.editor.canvas.heard;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.accessibility.AccessibleValue;
import javax.swing.JComponent;

/**
 * Something on the canvas that is no component of its own, for those who can't see it. It can't be moved, coloured or hidden:
 * it is as the piece says.
 */
abstract class AccessiblePart extends AccessibleContext implements Accessible, AccessibleComponent, AccessibleValue {
    private final JComponent canvas;

    AccessiblePart(JComponent canvas) {
        this.canvas = canvas;
    }

    /** Whether the block that it is, or is a part of, is selected. */
    abstract boolean selected();

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    @Override
    public AccessibleValue getAccessibleValue() {
        return this;
    }

    @Override
    public boolean setCurrentAccessibleValue(Number number) {
        return false;
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
        if (selected()) {
            states.add(AccessibleState.SELECTED);
        }
        return states;
    }

    @Override
    public Locale getLocale() {
        return canvas.getLocale();
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
    public boolean isFocusTraversable() {
        return true;
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
    public void setBackground(Color colour) {}

    @Override
    public void setForeground(Color colour) {}

    @Override
    public void setCursor(Cursor cursor) {}

    @Override
    public void setFont(Font font) {}

    @Override
    public void setEnabled(boolean enabled) {}

    @Override
    public void setVisible(boolean visible) {}

    @Override
    public void setLocation(Point point) {}

    @Override
    public void setBounds(Rectangle bounds) {}

    @Override
    public void setSize(Dimension size) {}

    @Override
    public void addFocusListener(FocusListener listener) {
        canvas.addFocusListener(listener);
    }

    @Override
    public void removeFocusListener(FocusListener listener) {
        canvas.removeFocusListener(listener);
    }
}

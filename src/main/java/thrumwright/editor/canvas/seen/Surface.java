package thrumwright.editor.canvas.seen;

import java.awt.Cursor;
import java.awt.Rectangle;
import javax.accessibility.Accessible;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;

/** The canvas as those know it who work on it: what it shows of which piece, and which part of it is in the window. */
public interface Surface extends Accessible {
    Session session();

    Texts texts();

    CanvasMap map();

    /** The part that is in the window, pixels of the canvas. */
    Rectangle getVisibleRect();

    /** Of the whole canvas, pixels. */
    int getHeight();

    /** Moves the window so that a part of the canvas can be seen. */
    void scrollRectToVisible(Rectangle part);

    /**
     * Where the middle is left out, shows it too at the same scale, so that the view can move sideways from the selvedge
     * that it moves away from.
     */
    void joinMiddle(boolean toTheRight);

    /** Whether a press of the mouse moves the view, whatever it falls on. */
    boolean panning();

    void setCursor(Cursor cursor);

    boolean requestFocusInWindow();

    void repaint();
}

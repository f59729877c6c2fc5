package thrumwright.benchmark;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import thrumwright.drawing.Fonts;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.WidthRule;
import thrumwright.editor.canvas.gesture.Gesturing;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;

/**
 * The canvas with its labels and rules, as large as a full window, painted into a picture. Everything happens on the
 * event thread, as in the window; all calls come from another thread.
 */
final class CanvasStage {
    static final int WIDTH = 1920;
    static final int HEIGHT = 1080;

    private final BufferedImage window = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final Session session;
    private PieceCanvas canvas;
    private JScrollPane scroll;
    private Point pressed;

    CanvasStage(PieceFile piece) {
        session = new Session(piece, Optional.empty());
        onEventThread(() -> {
            build();
            return null;
        });
        waitUntilSharp();
    }

    private void build() {
        Theme.LIGHT.apply(Fonts.load());
        Texts texts = Texts.of(Locale.UK);
        canvas = new PieceCanvas(session, texts, Theme.LIGHT.palette());
        canvas.setGestures(new Gesturing(new Edits(texts.phrases(), texts.words()), () -> {}, () -> {}));
        scroll = new JScrollPane(canvas);
        scroll.setBorder(null);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setRowHeaderView(new LabelColumn(canvas));
        scroll.setColumnHeaderView(new WidthRule(canvas));
        scroll.setSize(new Dimension(WIDTH, HEIGHT));
        scroll.addNotify();
        scroll.validate();
        paint();
    }

    static <T> T onEventThread(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        try {
            EventQueue.invokeAndWait(task);
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (InvocationTargetException | ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }

    PieceCanvas canvas() {
        return canvas;
    }

    Session session() {
        return session;
    }

    BufferedImage window() {
        return window;
    }

    /** Paints the whole window. On the event thread. */
    void paint() {
        scroll.validate();
        Graphics2D g = window.createGraphics();
        scroll.paint(g);
        g.dispose();
    }

    void waitUntilSharp() {
        boolean sharp = false;
        while (!sharp) {
            sharp = onEventThread(() -> {
                paint();
                return canvas.sharp();
            });
        }
    }

    /** Takes hold of a block's upper edge, in the middle of the window. On the event thread. */
    void press(String id) {
        session.select(Selection.of(Place.START, id));
        canvas.reveal(Place.START, id);
        BlockSpot spot = canvas.map().spot(Place.START, id).orElseThrow();
        Rectangle seen = canvas.getVisibleRect();
        pressed = new Point((int) seen.getCenterX(), (int) Math.round(spot.top()));
        mouse(MouseEvent.MOUSE_PRESSED, pressed.y);
    }

    /** Pulls the edge to so many pixels above where it was. On the event thread. */
    void pull(int pixels) {
        mouse(MouseEvent.MOUSE_DRAGGED, pressed.y - pixels);
    }

    /** Gives the pull up. On the event thread. */
    void letGo() {
        canvas.cancelGesture();
        pressed = null;
    }

    boolean pulling() {
        return pressed != null;
    }

    private void mouse(int id, int y) {
        canvas.dispatchEvent(new MouseEvent(
                canvas,
                id,
                System.currentTimeMillis(),
                InputEvent.BUTTON1_DOWN_MASK,
                pressed.x,
                y,
                pressed.x,
                y,
                1,
                false,
                MouseEvent.BUTTON1));
    }
}

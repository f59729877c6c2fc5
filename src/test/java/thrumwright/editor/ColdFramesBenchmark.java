package thrumwright.editor;

import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.random.RandomGenerator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.canvas.seen.Zoom.Fit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.testing.LargePieces;

/**
 * The frames of the first twenty seconds after a cold start, sixty a second, with the package's flag: a second of zooming, one of
 * panning and one of pulling an edge, in turn, by the mouse in the editor's own window at full HD. A frame is all that the
 * event thread does from one input to the next, with whatever the window paints for it; selecting a block and going to another
 * zoom, with which a second begins, is none. The 99th percentile should stay below
 * 8.3 ms; so the twelve longest of them all may take longer. Where the machine is busy, the thread's own time is what to look at.
 *
 * <p>On the screen at hand, or on one in pure Java where there is none. On an X screen the server paints part of it, for which the
 * clock waits and the thread's own time doesn't count.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(
        value = 3,
        jvmArgs = {
            "-XX:TieredStopAtLevel=1",
            "-Djava.awt.headless=false",
            "-Dcacio.managed.screensize=1920x1080",
            "--add-opens=java.base/java.lang.reflect=ALL-UNNAMED",
            "--add-opens=java.desktop/java.awt=ALL-UNNAMED",
            "--add-opens=java.desktop/sun.java2d=ALL-UNNAMED",
            "--add-exports=java.desktop/java.awt.peer=ALL-UNNAMED",
            "--add-exports=java.desktop/java.awt.dnd.peer=ALL-UNNAMED",
            "--add-exports=java.desktop/sun.awt=ALL-UNNAMED",
            "--add-exports=java.desktop/sun.awt.event=ALL-UNNAMED",
            "--add-exports=java.desktop/sun.awt.image=ALL-UNNAMED",
            "--add-exports=java.desktop/sun.awt.datatransfer=ALL-UNNAMED",
            "--add-exports=java.desktop/sun.java2d=ALL-UNNAMED",
            "--add-exports=java.base/sun.security.action=ALL-UNNAMED"
        })
public class ColdFramesBenchmark {
    private static final long SEED = 20_261_125;
    private static final int SECONDS = 20;
    private static final int A_SECOND = 60;

    @Param({"demo", "wide"})
    private String piece;

    private final RandomGenerator random = new SplittableRandom(SEED);
    private FrameTimes times;
    private EditorWindow editor;
    private PieceCanvas canvas;
    private Session session;
    private double aim = 1;

    @Benchmark
    public int frames() throws Exception {
        open();
        for (int second = 0; second < SECONDS; second++) {
            switch (second % 3) {
                case 0 -> zoom();
                case 1 -> pan();
                default -> drag();
            }
        }
        System.out.printf("%n%s", times.told());
        return SECONDS;
    }

    private void open() throws Exception {
        if (System.getenv("DISPLAY") == null) {
            Class.forName("com.github.caciocavallosilano.cacio.ctc.junit.CacioExtension");
        }
        Toolkit toolkit = Toolkit.getDefaultToolkit();
        onEventThread(this::openHere);
        times = new FrameTimes();
        toolkit.getSystemEventQueue().push(times);
        while (!onEventThread(() -> canvas.sharp() && times.peekEvent() == null)) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(1));
        }
    }

    private PieceCanvas openHere() throws FileProblem {
        session = new Session(piece.equals("demo") ? LargePieces.demo() : LargePieces.wide(), Optional.empty());
        editor = Rooms.forgetful().open(session);
        canvas = (PieceCanvas) ByName.in(editor.frame(), "canvas");
        editor.frame().setBounds(0, 0, 1920, 1080);
        editor.show();
        return canvas;
    }

    /** The queue is a new one, whose thread would keep the machine running. */
    @TearDown
    public void close() throws Exception {
        onEventThread(() -> {
            editor.dispose();
            times.end();
            return editor;
        });
    }

    private static <T> T onEventThread(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    /** Steps of the wheel at some points of the window, on the way to a scale and then to another. */
    private void zoom() throws Exception {
        times.aside(() -> {
            canvas.setZoom(Zoom.fitting(Fit.LOOM));
            return canvas.zoom();
        });
        for (int i = 0; i < A_SECOND; i++) {
            input("zoom", onEventThread(this::turned));
        }
    }

    private MouseWheelEvent turned() {
        if (Math.abs(Math.log(canvas.scale() / aim)) < 0.2) {
            aim = Math.exp(random.nextDouble(Math.log(0.4), Math.log(40)));
        }
        Rectangle seen = canvas.getVisibleRect();
        return new MouseWheelEvent(
                canvas,
                MouseEvent.MOUSE_WHEEL,
                System.currentTimeMillis(),
                InputEvent.CTRL_DOWN_MASK,
                seen.x + random.nextInt(seen.width),
                seen.y + random.nextInt(seen.height),
                0,
                0,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                1,
                canvas.scale() < aim ? -1 : 1,
                canvas.scale() < aim ? -0.5 : 0.5);
    }

    /** The picture dragged by up to 60 pixels, at a scale where single yarns are seen. */
    private void pan() throws Exception {
        Point at = times.aside(() -> {
            canvas.setZoom(Zoom.of(8));
            return middle();
        });
        input("pan", mouse(MouseEvent.MOUSE_PRESSED, at, MouseEvent.BUTTON2, InputEvent.BUTTON2_DOWN_MASK));
        for (int i = 2; i < A_SECOND; i++) {
            at.translate(random.nextInt(-60, 61), random.nextInt(-60, 61));
            input("pan", mouse(MouseEvent.MOUSE_DRAGGED, at, MouseEvent.BUTTON2, InputEvent.BUTTON2_DOWN_MASK));
        }
        input("pan", mouse(MouseEvent.MOUSE_RELEASED, at, MouseEvent.BUTTON2, 0));
    }

    private Point middle() {
        Rectangle seen = canvas.getVisibleRect();
        Point corner = canvas.getLocationOnScreen();
        return new Point(corner.x + (int) seen.getCenterX(), corner.y + (int) seen.getCenterY());
    }

    /** The upper edge of the second block, up and down by whole picks. */
    private void drag() throws Exception {
        Point edge = times.aside(this::edge);
        input("drag", mouse(MouseEvent.MOUSE_PRESSED, edge, MouseEvent.BUTTON1, InputEvent.BUTTON1_DOWN_MASK));
        for (int i = 1; i < A_SECOND; i++) {
            Point at = new Point(edge.x, edge.y - random.nextInt(-40, 60));
            input("drag", mouse(MouseEvent.MOUSE_DRAGGED, at, MouseEvent.BUTTON1, InputEvent.BUTTON1_DOWN_MASK));
        }
        times.aside(canvas::cancelGesture);
    }

    private Point edge() {
        String id = session.piece().start().blocks().get(1).id();
        session.select(Selection.of(Place.START, id));
        canvas.reveal(Place.START, id);
        BlockSpot spot = canvas.map().spot(Place.START, id).orElseThrow();
        return new Point(middle().x, canvas.getLocationOnScreen().y + (int) Math.round(spot.top()));
    }

    /** @param at on the screen */
    private MouseEvent mouse(int id, Point at, int button, int held) throws Exception {
        Point corner = onEventThread(canvas::getLocationOnScreen);
        long now = System.currentTimeMillis();
        return new MouseEvent(canvas, id, now, held, at.x - corner.x, at.y - corner.y, at.x, at.y, 1, false, button);
    }

    private void input(String deed, MouseEvent event) throws Exception {
        long begun = System.nanoTime();
        times.input(deed, event);
        LockSupport.parkNanos(TimeUnit.SECONDS.toNanos(1) / A_SECOND - (System.nanoTime() - begun));
    }
}

package thrumwright.editor;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.swing.JTabbedPane;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import thrumwright.block.Block;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.Zoom;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.library.Library;
import thrumwright.piece.Place;
import thrumwright.store.FileProblem;
import thrumwright.store.Structures;
import thrumwright.testing.LargePieces;

/**
 * A scripted editing run in the real window: selecting, changing amounts, undoing, redoing, going through the views,
 * zooming. Afterwards it says which single event kept the event thread busy longest; none may take more than 50 ms. Needs
 * a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 3, time = 4)
@Fork(1)
public class EventThreadBenchmark {
    @Param({"demo", "wide"})
    private String piece;

    private final Timing timing = new Timing();
    private EditorWindow editor;
    private PieceCanvas canvas;
    private JTabbedPane views;
    private Edits edits;
    private int step;

    /** Times every event. */
    private static final class Timing extends EventQueue {
        private double longest;
        private String which = "none";
        private String doing = "nothing";

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long from = System.nanoTime();
            super.dispatchEvent(event);
            double took = (System.nanoTime() - from) / 1e6;
            if (took > longest) {
                longest = took;
                which = event.getClass().getSimpleName() + " while " + doing;
            }
        }
    }

    @Setup
    public void open() throws Exception {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(timing);
        EventQueue.invokeAndWait(this::openHere);
    }

    private void openHere() {
        try {
            Workroom room = new Workroom(
                    new Settings(Optional.empty()),
                    Library.fixed(Structures.builtIn().all()));
            editor = room.open(
                    new Session(piece.equals("demo") ? LargePieces.demo() : LargePieces.wide(), Optional.empty()));
            edits = editor.desk().edits();
            canvas = (PieceCanvas) named(editor.frame(), "canvas");
            views = (JTabbedPane) named(editor.frame(), "views");
            editor.frame().setSize(1900, 1060);
            editor.show();
        } catch (FileProblem e) {
            throw new IllegalStateException(e);
        }
    }

    private static Component named(Container container, String name) {
        for (Component child : container.getComponents()) {
            Component found =
                    name.equals(child.getName()) ? child : child instanceof Container inner ? named(inner, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    @Setup(Level.Iteration)
    public void begin() {
        timing.longest = 0;
    }

    @TearDown(Level.Iteration)
    public void say() {
        System.out.printf("longest event: %.1f ms, %s%n", timing.longest, timing.which);
    }

    @Benchmark
    public int edit() throws Exception {
        step++;
        EventQueue.invokeAndWait(this::next);
        EventQueue.invokeAndWait(() -> {});
        return step;
    }

    private void next() {
        List<Block> blocks = editor.session().piece().start().blocks();
        Block block = blocks.get(step / 8 % (blocks.size() - 1));
        switch (step % 8) {
            case 0 -> does("selecting", () -> editor.session().select(Selection.of(Place.START, block.id())));
            case 1 -> does("changing an amount", () -> change(block));
            case 2 -> does("undoing", () -> editor.session().undo());
            case 3 -> does("redoing", () -> editor.session().redo());
            case 4 -> does("opening a view", this::nextView);
            case 5 -> does("trying an amount out", () -> tried(block));
            case 6 -> does("giving it up", () -> editor.session().endPreview());
            default -> does("zooming", () -> canvas.setZoom(Zoom.from(canvas.scale(), step % 16 < 8 ? 1 : -1)));
        }
    }

    private void does(String what, Runnable work) {
        timing.doing = what;
        work.run();
    }

    private void nextView() {
        views.setSelectedIndex((views.getSelectedIndex() + 1) % views.getTabCount());
    }

    private void change(Block block) {
        editor.session().edit(edits.amount(Place.START, more(block)));
    }

    private void tried(Block block) {
        editor.session().preview(edits.amount(Place.START, more(block)));
    }

    private Block more(Block block) {
        return Amounts.hasHeight(block)
                ? Amounts.ofHeight(block, 4 + step % 9, editor.session().piece(), Place.START)
                : block;
    }
}

package thrumwright.editor;

import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.Action;
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
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.Place;
import thrumwright.testing.LargePieces;

/**
 * A scripted editing run in the real window, from its opening on: selecting, editing, undoing, redoing, going through the views and forms,
 * zooming, scrolling. Afterwards it says of each of these how long its longest event kept the event thread busy; none may
 * take more than 50 ms. The first six rounds only warm up, since until then the compiler keeps one
 * core busy. Needs a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, batchSize = EventThreadBenchmark.ALL)
@Measurement(iterations = 3, batchSize = EventThreadBenchmark.ALL)
@Fork(1)
public class EventThreadBenchmark {
    private static final int DEEDS = 21;
    /** Every deed so often that it has met each view and each form. */
    static final int ALL = DEEDS * 14;

    @Param({"demo", "wide"})
    private String piece;

    private final EventTimes times = new EventTimes();
    private EditorWindow editor;
    private PieceCanvas canvas;
    private JTabbedPane views;
    private JTabbedPane forms;
    private Edits edits;
    private int step;

    /** As the program does it. */
    @Setup
    public void open() throws Exception {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(times);
        Settings settings = new Settings(Optional.empty());
        settings.putAll(Map.of("window", "0,0,1900,1060,0"));
        Workroom room = Rooms.with(settings);
        Workroom.ToOpen work = new Workroom.ToOpen(
                new Session(piece.equals("demo") ? LargePieces.demo() : LargePieces.wide(), Optional.empty()),
                Optional.empty(),
                Optional.empty());
        CountDownLatch whole = new CountDownLatch(1);
        Opening opening = new Opening(room, work, window -> {
            editor = window;
            whole.countDown();
        });
        opening.begin();
        whole.await();
        EventQueue.invokeAndWait(this::find);
    }

    private void find() {
        edits = editor.desk().edits();
        canvas = (PieceCanvas) ByName.in(editor.frame(), "canvas");
        views = (JTabbedPane) ByName.in(editor.frame(), "views");
        forms = (JTabbedPane) ByName.in(editor.frame(), "forms");
    }

    @TearDown(Level.Iteration)
    public void say() {
        System.out.print(times.told());
        times.clear();
    }

    @TearDown
    public void close() throws Exception {
        EventQueue.invokeAndWait(editor::dispose);
    }

    /** One thing done, with all events that follow from it. */
    @Benchmark
    public int edit() throws Exception {
        step++;
        EventQueue.invokeAndWait(this::next);
        do {
            EventQueue.invokeAndWait(() -> {});
        } while (times.peekEvent() != null);
        return step;
    }

    private void next() {
        List<Block> blocks = session().piece().start().blocks();
        int round = step / DEEDS;
        Block block = blocks.get(round % (blocks.size() - 1));
        switch (step % DEEDS) {
            case 0 -> does("selecting at the start", () -> session().select(Selection.of(Place.START, block.id())));
            case 1 -> does("changing an amount", () -> change(block));
            case 2 -> does("undoing", () -> session().undo());
            case 3 -> does("redoing", () -> session().redo());
            case 4 -> does("opening view " + nextView(), () -> views.setSelectedIndex(nextView()));
            case 5 -> does("trying an amount out", () -> tried(block));
            case 6 -> does("giving it up", () -> session().endPreview());
            case 7 -> does("zooming", () -> canvas.setZoom(canvas.zoom().by(canvas.scale(), round % 2 == 0 ? 1 : -1)));
            case 8 -> does("selecting in the top", () -> session().select(Selection.of(Place.TOP, block.id())));
            case 9 -> does("adding a block", () -> command("add-twining"));
            case 10 -> does("moving it", () -> command("down"));
            case 11 -> does("duplicating it", () -> command("duplicate"));
            case 12 -> does("taking them out", () -> command("delete"));
            case 13 -> does("selecting all", () -> command("select-all"));
            case 14 -> does("parting the ends", () -> command("top-own"));
            case 15 -> does("letting the top follow", () -> command("top-follows"));
            case 16 -> does("opening form " + nextForm(), () -> forms.setSelectedIndex(nextForm()));
            case 17 -> does("changing the warp", () -> editor.session().edit(widened()));
            case 18 -> does("repainting all", () -> editor.frame().repaint());
            case 19 -> does("scrolling", () -> canvas.scrollRectToVisible(new Rectangle(0, round % 2 * 600, 200, 200)));
            default -> does("going back to the beginning", () -> session().jump(0));
        }
    }

    private Session session() {
        return editor.session();
    }

    private void command(String id) {
        Action onCanvas = canvas.getActionMap().get(id);
        Action command = onCanvas != null
                ? onCanvas
                : editor.frame().getRootPane().getActionMap().get(id);
        command.actionPerformed(new ActionEvent(canvas, ActionEvent.ACTION_PERFORMED, id));
    }

    private void does(String what, Runnable work) {
        times.begin(what);
        work.run();
    }

    private int nextView() {
        return (views.getSelectedIndex() + 1) % views.getTabCount();
    }

    private int nextForm() {
        return (forms.getSelectedIndex() + 1) % forms.getTabCount();
    }

    private Edit widened() {
        return Edit.of(
                "wider",
                piece ->
                        piece.withWarp(piece.warp().withWidth(wider(piece.warp().width()))));
    }

    private static Length wider(Length width) {
        return Length.parse(Math.round(width.mm()) + 10 + " mm");
    }

    private void change(Block block) {
        session().edit(edits.amount(Place.START, more(block)));
    }

    private void tried(Block block) {
        session().preview(edits.amount(Place.START, more(block)));
    }

    private Block more(Block block) {
        return Amounts.hasHeight(block)
                ? Amounts.ofHeight(block, 4 + step % 9, session().piece(), Place.START)
                : block;
    }
}

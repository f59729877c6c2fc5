package thrumwright.editor;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JFrame;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.look.OneByOne;
import thrumwright.editor.window.piece.EditorWindow;

/**
 * Opens a window by one event after the other, as each takes a while: it is made, laid out, arranged and shown, and only when the
 * piece has been painted come the parts around it.
 */
final class Opening {
    private final Workroom room;
    private final Workroom.ToOpen work;
    private final Consumer<EditorWindow> whole;
    private final Deque<Runnable> rest = new ArrayDeque<>();
    private JFrame frame;
    private PieceCanvas canvas;

    /** @param whole given the window when all of it is there */
    Opening(Workroom room, Workroom.ToOpen work, Consumer<EditorWindow> whole) {
        this.room = room;
        this.work = work;
        this.whole = whole;
    }

    void begin() {
        OneByOne.begin(List.of(() -> frame = new JFrame(), () -> canvas = room.canvas(work), this::make));
    }

    private void make() {
        EditorWindow window = room.begin(work, frame, canvas);
        rest.addAll(window.rest());
        rest.add(() -> whole.accept(window));
        List<Runnable> parts = new ArrayList<>(window.outline());
        parts.add(this::connect);
        parts.add(frame::validate);
        parts.add(() -> window.show(this::next));
        OneByOne.begin(parts);
    }

    /** Makes the screen's side of it, and asks how large its parts would like to be. */
    private void connect() {
        frame.addNotify();
        frame.getContentPane().getPreferredSize();
    }

    /** What a step leaves to be done, such as painting, comes before the next. */
    private void next() {
        rest.remove().run();
        if (!rest.isEmpty()) {
            EventQueue.invokeLater(this::next);
        }
    }
}

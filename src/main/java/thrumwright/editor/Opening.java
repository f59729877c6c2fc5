package thrumwright.editor;

import java.awt.EventQueue;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import thrumwright.editor.look.OneByOne;
import thrumwright.editor.window.piece.EditorWindow;

/**
 * Opens a window by one event after the other, as each takes a while: it is laid out, arranged and shown, and only when the piece
 * has been painted come the parts around it.
 */
final class Opening {
    private final EditorWindow window;
    private final Deque<Runnable> rest;

    /** @param whole run when all of the window is there */
    Opening(EditorWindow window, Runnable whole) {
        this.window = window;
        this.rest = new ArrayDeque<>(window.rest());
        rest.add(whole);
    }

    void begin() {
        OneByOne.begin(List.of(window::layOut, this::connect, window.frame()::validate, () -> window.show(this::next)));
    }

    /** Makes the screen's side of it, and asks how large its parts would like to be. */
    private void connect() {
        window.frame().addNotify();
        window.frame().getContentPane().getPreferredSize();
    }

    /** What a step leaves to be done, such as painting, comes before the next. */
    private void next() {
        rest.remove().run();
        if (!rest.isEmpty()) {
            EventQueue.invokeLater(this::next);
        }
    }
}

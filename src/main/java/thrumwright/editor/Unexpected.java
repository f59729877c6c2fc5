package thrumwright.editor;

import java.awt.EventQueue;
import java.util.Map;

/** The one place where whatever nobody expected arrives, and is told in every window. */
final class Unexpected {
    private Unexpected() {}

    static void toldIn(Workroom room) {
        Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> EventQueue.invokeLater(() -> tell(room, thrown)));
    }

    private static void tell(Workroom room, Throwable thrown) {
        String what = String.valueOf(thrown.getMessage());
        String sentence = room.place().texts().say("message.inside", Map.of("what", what));
        room.windows().forEach(window -> window.problem(sentence));
    }
}

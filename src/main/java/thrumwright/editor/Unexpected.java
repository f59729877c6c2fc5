package thrumwright.editor;

import java.awt.EventQueue;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JOptionPane;
import thrumwright.editor.text.Texts;
import thrumwright.store.FileProblem;
import thrumwright.store.keeping.FaultLog;
import thrumwright.store.keeping.Keeper;

/**
 * The one place where whatever nobody expected arrives, of any thread: first what isn't saved is kept, then the fault is
 * logged, then it is told in every window, which goes on.
 */
final class Unexpected implements Thread.UncaughtExceptionHandler {
    private final Texts texts;
    private final Keeper keeper;
    private final Optional<FaultLog> log;
    private final AtomicReference<Workroom> room = new AtomicReference<>();

    private Unexpected(Texts texts, Keeper keeper, Optional<FaultLog> log) {
        this.texts = texts;
        this.keeper = keeper;
        this.log = log;
    }

    /** From now on. */
    static Unexpected arrivesHere(Texts texts, Keeper keeper, Optional<FaultLog> log) {
        Unexpected unexpected = new Unexpected(texts, keeper, log);
        Thread.setDefaultUncaughtExceptionHandler(unexpected);
        return unexpected;
    }

    /** Tells it there, rather than in a window of its own. */
    void toldIn(Workroom windows) {
        room.set(windows);
    }

    @Override
    public void uncaughtException(Thread thread, Throwable thrown) {
        String sentence = texts.say(thrown instanceof OutOfMemoryError ? "message.memory" : "message.inside");
        String details = FaultLog.details(Instant.now(), thread.getName(), thrown);
        try {
            keeper.flush();
        } catch (IllegalStateException e) {
            details += FaultLog.details(Instant.now(), thread.getName(), e);
        }
        String all = details + logged(details);
        EventQueue.invokeLater(() -> tell(sentence, all));
    }

    /** Why it isn't logged, if it isn't. */
    private String logged(String details) {
        try {
            if (log.isPresent()) {
                log.get().add(details);
            }
            return "";
        } catch (FileProblem e) {
            return e.getMessage();
        }
    }

    private void tell(String sentence, String details) {
        Workroom windows = room.get();
        if (windows == null || windows.windows().isEmpty()) {
            JOptionPane.showMessageDialog(null, sentence + "\n\n" + details);
        } else {
            windows.windows().forEach(window -> window.fault(sentence, details));
        }
    }
}

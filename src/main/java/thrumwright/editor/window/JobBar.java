package thrumwright.editor.window;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.text.Texts;
import thrumwright.output.page.Progress;
import thrumwright.output.page.Stopped;

/** Does one long work at a time beside the event thread, shows how far it has come, and lets the weaver stop it. */
public final class JobBar {
    /** So often a work that waits looks whether it is to stop, ms. */
    private static final long LOOKS_EVERY = 20;

    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout("insets 6 12 6 12", "[][grow, fill][]", "[]"));
    private final JLabel label = new JLabel();
    private final JProgressBar bar = new JProgressBar();
    private final JButton stop;
    private final Runnable changed;
    private Running running;

    /** A long work; whatever it throws is handed on. */
    @FunctionalInterface
    public interface LongWork<T> {
        public T run(Progress progress) throws Exception;
    }

    /**
     * How a work ended: with a result, or with what it threw.
     *
     * @param thrown null if it went well
     */
    public record Ended<T>(T result, Exception thrown) {}

    /** @param changed is told whenever a work begins or has ended */
    public JobBar(Texts texts, Runnable changed) {
        this.texts = texts;
        this.changed = changed;
        this.stop = new JButton(texts.say("job.stop"));
        panel.setName("job");
        label.setName("jobLabel");
        bar.setName("jobProgress");
        label.setLabelFor(bar);
        stop.setName("jobStop");
        stop.setToolTipText(texts.say("job.stop.tip"));
        stop.addActionListener(event -> stop());
        panel.add(label);
        panel.add(bar);
        panel.add(stop);
        panel.setVisible(false);
        panel.registerKeyboardAction(
                event -> stop(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    public JComponent component() {
        return panel;
    }

    /** Whether a work is under way; another can't begin before it has ended. */
    public boolean busy() {
        return running != null;
    }

    /** Asks the work that is under way to stop; it may take until the end of a page. */
    public void stop() {
        if (running != null) {
            running.stopping = true;
            stop.setEnabled(false);
            label.setText(texts.say("job.stopping"));
        }
    }

    /**
     * Begins a work. The program does not end before it has ended.
     *
     * @param key of the text that tells how far it has come, of {@code page} and {@code count}
     * @param ended is told on the event thread how it ended
     */
    public <T> void run(String key, LongWork<T> work, Consumer<Ended<T>> ended) {
        Running mine = new Running(key);
        Component before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        running = mine;
        stop.setEnabled(true);
        label.setText(texts.say("job.begins"));
        bar.setIndeterminate(true);
        panel.setVisible(true);
        changed.run();
        new Thread(
                        () -> {
                            Ended<T> how = perform(work, mine);
                            EventQueue.invokeLater(() -> {
                                running = null;
                                panel.setVisible(false);
                                changed.run();
                                giveBack(before);
                                ended.accept(how);
                            });
                        },
                        "sheet work")
                .start();
    }

    /**
     * Goes on with what is being made elsewhere: at once if it is made already, else as soon as it is, and until then the
     * weaver may stop waiting.
     */
    public <T> void after(Future<T> made, Consumer<Ended<T>> then) {
        LongWork<T> waiting = progress -> await(made, progress);
        if (made.isDone()) {
            then.accept(perform(waiting, Progress.UNWATCHED));
        } else {
            run("job.page", waiting, then);
        }
    }

    /**
     * Waits for what is being made elsewhere.
     *
     * @throws Stopped if the weaver doesn't want to wait any longer
     */
    public static <T> T await(Future<T> made, Progress progress) throws Exception {
        while (true) {
            if (progress.stopping()) {
                throw new Stopped();
            }
            try {
                return made.get(LOOKS_EVERY, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                // not yet
            } catch (ExecutionException e) {
                throw e.getCause() instanceof Exception cause ? cause : e;
            }
        }
    }

    /** The button that began the work can't keep the keyboard while it works. */
    private static void giveBack(Component before) {
        if (before instanceof JButton && before.isShowing()) {
            before.requestFocusInWindow();
        }
    }

    private static <T> Ended<T> perform(LongWork<T> work, Progress progress) {
        try {
            return new Ended<>(work.run(progress), null);
        } catch (Exception thrown) {
            return new Ended<>(null, thrown);
        } catch (Error fault) {
            // such as no more memory: the work has ended all the same, and what waits for it goes on
            return new Ended<>(null, new ExecutionException(fault));
        }
    }

    private void show(Running mine, int pages, int all) {
        if (running == mine && !mine.stopping) {
            bar.setIndeterminate(false);
            bar.setMaximum(all);
            bar.setValue(pages);
            label.setText(texts.say(mine.key, Map.of("page", Math.min(all, pages + 1), "count", all)));
        }
    }

    private final class Running implements Progress {
        private final String key;
        private volatile boolean stopping;

        Running(String key) {
            this.key = key;
        }

        @Override
        public void done(int pages, int all) {
            EventQueue.invokeLater(() -> show(this, pages, all));
        }

        @Override
        public boolean stopping() {
            return stopping;
        }
    }
}

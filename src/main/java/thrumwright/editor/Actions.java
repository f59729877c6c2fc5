package thrumwright.editor;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import thrumwright.measure.Phrases;

/**
 * The window's actions by their ids. Text, tooltip and key of each stand in one bundle under {@code ID.text},
 * {@code ID.tip} and {@code ID.key}.
 */
final class Actions {
    private final Phrases phrases;
    private final Map<String, One> all = new LinkedHashMap<>();

    Actions(Phrases phrases) {
        this.phrases = phrases;
    }

    /** Declares an action that can always be done. */
    Action add(String id, Runnable work) {
        return add(id, work, () -> true, () -> phrases.say(id + ".text"));
    }

    /** Declares an action that can be done at times. */
    Action add(String id, Runnable work, BooleanSupplier possible) {
        return add(id, work, possible, () -> phrases.say(id + ".text"));
    }

    /** Declares an action whose text changes. */
    Action add(String id, Runnable work, BooleanSupplier possible, Supplier<String> text) {
        One action = new One(work, possible, text);
        action.putValue(Action.SHORT_DESCRIPTION, phrases.say(id + ".tip"));
        if (phrases.has(id + ".key")) {
            action.putValue(Action.ACCELERATOR_KEY, key(phrases.say(id + ".key")));
        }
        all.put(id, action);
        action.refresh();
        return action;
    }

    static KeyStroke key(String text) {
        KeyStroke key = KeyStroke.getKeyStroke(text);
        if (key == null) {
            throw new IllegalStateException("no key is called “" + text + "”");
        }
        return key;
    }

    Action get(String id) {
        One action = all.get(id);
        if (action == null) {
            throw new IllegalArgumentException("no action has the id " + id);
        }
        return action;
    }

    List<Action> all() {
        return List.copyOf(all.values());
    }

    /** Brings texts and whether they can be done up to date. */
    void refresh() {
        all.values().forEach(One::refresh);
    }

    private static final class One extends AbstractAction {
        private static final long serialVersionUID = 1L;

        private final transient Runnable work;
        private final transient BooleanSupplier possible;
        private final transient Supplier<String> text;

        One(Runnable work, BooleanSupplier possible, Supplier<String> text) {
            this.work = work;
            this.possible = possible;
            this.text = text;
        }

        void refresh() {
            putValue(NAME, text.get());
            setEnabled(possible.getAsBoolean());
        }

        @Override
        public void actionPerformed(java.awt.event.ActionEvent event) {
            if (possible.getAsBoolean()) {
                work.run();
            }
        }
    }
}

package thrumwright.editor.text;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What the commands do. Before any of them runs, the field that is being typed in is taken over. */
public final class Commands {
    private final CommandTexts texts;
    private final Runnable takeOver;
    private final Function<String, Icon> icons;
    private final Map<String, Command> commands = new LinkedHashMap<>();

    /**
     * @param takeOver commits the field that is being typed in
     * @param icons finds a picture by its name
     */
    public Commands(CommandTexts texts, Function<String, Icon> icons, Runnable takeOver) {
        this.texts = texts;
        this.icons = icons;
        this.takeOver = takeOver;
    }

    private final class Command extends AbstractAction {
        private static final long serialVersionUID = 1L;

        private final transient Runnable run;
        private final transient BooleanSupplier possible;
        private final transient Optional<BooleanSupplier> on;

        Command(CommandText text, Runnable run, BooleanSupplier possible, Optional<BooleanSupplier> on) {
            super(text.text());
            this.run = run;
            this.possible = possible;
            this.on = on;
            look();
            putValue(SHORT_DESCRIPTION, text.tip());
            putValue(ACTION_COMMAND_KEY, text.id());
            text.icon().ifPresent(name -> putValue(SMALL_ICON, icons.apply(name)));
            if (!text.keys().isEmpty()) {
                putValue(ACCELERATOR_KEY, text.keys().get(0));
            }
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            takeOver.run();
            if (possible.getAsBoolean()) {
                run.run();
            }
            look();
        }

        /** Whether it is possible now, and on. */
        private void look() {
            setEnabled(possible.getAsBoolean());
            on.ifPresent(state -> putValue(SELECTED_KEY, state.getAsBoolean()));
        }
    }

    public void add(String id, Runnable run) {
        add(id, run, () -> true);
    }

    public void add(String id, Runnable run, BooleanSupplier possible) {
        commands.put(id, new Command(texts.get(id), run, possible, Optional.empty()));
    }

    /**
     * A command that switches something on and off.
     *
     * @param on whether it is on
     */
    public void addSwitch(String id, Runnable run, BooleanSupplier on) {
        addSwitch(id, run, on, () -> true);
    }

    public void addSwitch(String id, Runnable run, BooleanSupplier on, BooleanSupplier possible) {
        commands.put(id, new Command(texts.get(id), run, possible, Optional.of(on)));
    }

    /** @throws IllegalArgumentException if nothing was added under that id */
    public Action get(String id) {
        Command command = commands.get(id);
        if (command == null) {
            throw new IllegalArgumentException("the command “" + id + "” does nothing yet");
        }
        return command;
    }

    /** Runs a command as its menu item would. */
    public void run(String id) {
        get(id).actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, id));
    }

    /** Whether a command's keys count on the canvas only. */
    public boolean onCanvas(String id) {
        return texts.get(id).where() == CommandText.Where.CANVAS;
    }

    public Set<String> ids() {
        return Set.copyOf(commands.keySet());
    }

    /** Looks again which commands are possible, and which are on. */
    public void refresh() {
        commands.values().forEach(Command::look);
    }

    /** Lets the keys of all commands work in a window. */
    public void bindWindow(JComponent root) {
        bind(root, JComponent.WHEN_IN_FOCUSED_WINDOW, false);
    }

    /** Lets the keys that count on the canvas only work there. */
    public void bindCanvas(JComponent canvas) {
        bind(canvas, JComponent.WHEN_FOCUSED, true);
    }

    private void bind(JComponent component, int condition, boolean onCanvas) {
        for (Map.Entry<String, Command> entry : commands.entrySet()) {
            CommandText text = texts.get(entry.getKey());
            if (onCanvas(text.id()) == onCanvas) {
                component.getActionMap().put(text.id(), entry.getValue());
                for (KeyStroke key : text.keys()) {
                    component.getInputMap(condition).put(key, text.id());
                }
            }
        }
    }

    /** The key that goes with most of the commands on this system, as a {@code KeyStroke} names it. */
    public static String menuKey() {
        return GraphicsEnvironment.isHeadless()
                        || Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx() != InputEvent.META_DOWN_MASK
                ? "ctrl"
                : "meta";
    }
}

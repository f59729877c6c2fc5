package thrumwright.editor;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;
import thrumwright.editor.window.piece.EditorWindow;

/**
 * Loads the classes that the first window is made of while the piece is read and planned: on the event thread, where each
 * would be loaded when it is first needed, that would take half of the first event's time. No component is made.
 */
final class ClassesAhead {
    private static final String OURS = "thrumwright.";

    private final Set<Class<?>> known = new HashSet<>();
    private final Deque<Class<?>> waiting = new ArrayDeque<>();

    private ClassesAhead() {}

    /** Begins with the window and goes on with whatever its fields and methods name. Only once the look is known. */
    static Thread begin() {
        Thread thread = new Thread(() -> from(EditorWindow.class), "classes ahead");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /** Waits until all are there; whoever can't wait loses nothing, since what is missing is loaded when it is needed. */
    static void await(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** @return what was loaded */
    static Set<Class<?>> from(Class<?> first) {
        ClassesAhead ahead = new ClassesAhead();
        ahead.add(first);
        ahead.look();
        ahead.load();
        return ahead.known;
    }

    private void load() {
        while (!waiting.isEmpty()) {
            Class<?> next = waiting.remove();
            if (isPart(next)) {
                link(next);
                within(next);
            }
        }
    }

    private void within(Class<?> ours) {
        add(ours.getSuperclass());
        List.of(ours.getDeclaredClasses()).forEach(this::add);
        for (Field field : ours.getDeclaredFields()) {
            add(field.getType());
        }
        for (Method method : ours.getDeclaredMethods()) {
            add(method.getReturnType());
            List.of(method.getParameterTypes()).forEach(this::add);
        }
    }

    private void add(Class<?> type) {
        boolean wanted = type != null && !type.isPrimitive() && !type.isArray();
        if (wanted && known.add(type)) {
            waiting.add(type);
        }
    }

    /** Ours, or something that is seen. */
    private static boolean isPart(Class<?> type) {
        return type.getName().startsWith(OURS)
                || JComponent.class.isAssignableFrom(type)
                || ComponentUI.class.isAssignableFrom(type);
    }

    /** That takes as long again as to load it. */
    private void link(Class<?> type) {
        try {
            Class.forName(type.getName(), true, type.getClassLoader());
        } catch (ClassNotFoundException | LinkageError e) {
            // Whoever needs it says so if it can't be had.
            known.remove(type);
        }
    }

    /** What draws the components, as the look has it. */
    private void look() {
        UIDefaults look = UIManager.getLookAndFeelDefaults();
        for (Object key : List.copyOf(look.keySet())) {
            if (key instanceof String name && name.endsWith("UI")) {
                add(look.getUIClass(name));
            }
        }
    }
}

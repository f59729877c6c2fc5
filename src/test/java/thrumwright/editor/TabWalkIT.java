package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JTabbedPane;
import javax.swing.RootPaneContainer;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.look.Theme;
import thrumwright.testing.WindowTest;

/**
 * Goes with Tab through every state of the window and through every dialog, and looks at each stop: it has a name, all of
 * it is in sight, it is large enough to be met, and one sees that it has the keyboard (WCAG 2.2: 4.1.2, 2.4.7, 2.4.11,
 * 2.5.8 and 1.4.11). What is read aloud of each window has a name too.
 */
class TabWalkIT {
    /** What takes the keyboard does so at once, ms. */
    private static final int PATIENCE = 2000;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final Set<String> found = new LinkedHashSet<>();
    private Stage stage;
    private final Set<String> reached = new TreeSet<>();
    private int stops;
    private int nodes;

    @Test
    void everyStopHasANameIsInSightAndIsSeen() {
        stage = Stage.open(window, Locale.UK, Stage.ofAllKinds());
        stage.size(1024, 600);
        window.settle(stage.editor().frame());
        stage.settle();
        window.paintNoMore();
        stage.run(() -> stage.editor().problem("Something to be put away."));
        for (Theme theme : List.of(Theme.DARK, Theme.HIGH_CONTRAST, Theme.LIGHT)) {
            stage.theme(theme);
            walk(
                    theme + ", whole window",
                    stage.editor().frame(),
                    stage.editor().frame().getRootPane());
        }
        stage.eachView(state -> {
            heard(state);
            walk(state, stage.editor().frame(), tabs("views"));
        });
        stage.eachForm(state -> {
            heard(state);
            walk(state, stage.editor().frame(), tabs("forms"));
        });
        assertNothingFound();
        assertThat(stops).as("stops").isGreaterThan(350);
        assertThat(reached)
                .contains("tool.new", "add", "tool.sheet", "canvas", "views", "forms", "wares", "pickColour");
    }

    @Test
    void dialogsToo() {
        stage = Stage.open(window, Locale.UK, Stage.demo("saltmarsh-panel"));
        window.paintNoMore();
        int seen = 0;
        for (Object id : stage.ask(
                () -> stage.editor().frame().getRootPane().getActionMap().keys())) {
            Action action = stage.ask(
                    () -> stage.editor().frame().getRootPane().getActionMap().get(id));
            String text = String.valueOf(action.getValue(Action.NAME));
            if (text.endsWith("…") && action.isEnabled()
                    || List.of("sheet", "loom", "keys").contains(id)) {
                seen += opened(String.valueOf(id), action);
            }
        }
        assertNothingFound();
        assertThat(seen).as("windows that were looked at").isGreaterThan(7);
    }

    private int opened(String id, Action action) {
        Set<Window> before = showing();
        EventQueue.invokeLater(
                () -> action.actionPerformed(new ActionEvent(stage.editor().frame(), 0, id)));
        WindowTest.waitFor("something at " + id, () -> !others(before).isEmpty());
        int seen = 0;
        for (Window other : others(before)) {
            stage.robot().waitForIdle();
            if (stage.ask(
                    () -> Stage.all(other, JFileChooser.class, any -> true).isEmpty())) {
                seen++;
                stage.run(other::validate);
                stage.run(() -> count(id, other));
                walk(id, other, other);
            }
            stage.run(() -> {
                other.setVisible(false);
                other.dispose();
            });
        }
        return seen;
    }

    private static Set<Window> others(Set<Window> before) {
        Set<Window> now = showing();
        now.removeAll(before);
        return now;
    }

    /** Asked where windows are made, so that none is met half made. */
    private static Set<Window> showing() {
        return WindowTest.onEventThread(() -> Stream.of(Window.getWindows())
                .filter(any -> any.isShowing() && any instanceof RootPaneContainer)
                .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private void assertNothingFound() {
        assertThat(nodes).as("what is heard").isGreaterThan(500);
        assertThat(found).as(String.join("\n", found)).isEmpty();
    }

    private JTabbedPane tabs(String name) {
        return stage.robot().finder().findByName(stage.editor().frame(), name, JTabbedPane.class);
    }

    private void heard(String state) {
        stage.settle();
        stage.run(() -> count(state, stage.editor().frame()));
    }

    private void count(String state, Window of) {
        HeardNames heard = HeardNames.in(of);
        nodes += heard.named();
        heard.nameless().forEach(what -> found.add(state + ": no name: " + what));
    }

    /** From the first stop within a part to where it is left again. */
    private void walk(String state, Window in, Component part) {
        stage.settle();
        Set<Component> met = new LinkedHashSet<>();
        Optional<FocusSeen> before = Optional.empty();
        for (Component at = first(in, part); at != null && met.add(at); at = after(at, part)) {
            Optional<FocusSeen> seen = seen(state, before, (JComponent) at);
            reached.add(String.valueOf(at.getName()));
            if (seen.isPresent()) {
                before = seen;
            } else if (stage.ask(at::isFocusable) && at.isEnabled()) {
                found.add(state + ": doesn't take the keyboard: " + at);
            }
        }
        stops += met.size();
    }

    private Component after(Component at, Component part) {
        return stage.ask(() -> next(at, part));
    }

    private Component first(Window in, Component part) {
        return stage.ask(() -> part instanceof JTabbedPane ? part : next(((RootPaneContainer) in).getRootPane(), part));
    }

    /** Where Tab leads, as long as it is within a part. */
    private static Component next(Component from, Component part) {
        Container root = from.getFocusCycleRootAncestor();
        Component next = root.getFocusTraversalPolicy().getComponentAfter(root, from);
        if (next instanceof RootPaneContainer whole) {
            // the screen in pure Java takes the window itself for a stop, which no other does
            next = root.getFocusTraversalPolicy().getComponentAfter(root, whole.getRootPane());
        }
        return next instanceof JComponent && SwingUtilities.isDescendingFrom(next, part) ? next : null;
    }

    /**
     * Gives it the keyboard and looks at it, and at what had the keyboard before, in the one event in which it has it: a
     * moment later another may.
     *
     * @return nothing if it can't have the keyboard any more; it is passed over, and the one before still has it
     */
    private Optional<FocusSeen> seen(String state, Optional<FocusSeen> before, JComponent component) {
        stage.run(component::requestFocus);
        if (component instanceof PieceCanvas canvas) {
            waitForCloth(canvas);
        }
        long end = System.currentTimeMillis() + PATIENCE;
        Optional<FocusSeen> seen = Optional.empty();
        while (seen.isEmpty() && System.currentTimeMillis() < end) {
            stage.robot().waitForIdle();
            seen = stage.ask(
                    () -> component.isFocusOwner() ? Optional.of(changed(state, before, component)) : Optional.empty());
        }
        return seen;
    }

    /** In a new theme it still has its old colours for a while, on which the new frame needn't stand out. */
    private void waitForCloth(PieceCanvas canvas) {
        WindowTest.waitFor(
                "the cloth in its colours",
                () -> stage.ask(() -> {
                    FocusSeen.of(canvas);
                    return canvas.sharp();
                }));
    }

    private FocusSeen changed(String state, Optional<FocusSeen> before, JComponent component) {
        before.ifPresent(other -> other.problems().forEach(what -> found.add(state + ": " + what)));
        return FocusSeen.of(component);
    }
}

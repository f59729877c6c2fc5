package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.JFileChooser;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPopupMenu;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.editor.look.Theme;
import thrumwright.piece.Piece;
import thrumwright.testing.LongTexts;
import thrumwright.testing.WindowTest;

/**
 * Nothing is cut off: in every view, form, menu and dialog, in every theme, on small and large screens, in English and
 * with texts half as long again. A screen at 200 % has half as many points each way.
 */
class RoomForEverythingIT {
    /** 1024 × 600, 1366 × 768 and 1920 × 1080 at 100 %, and at 200 % as far as the window gets so small. */
    private static final List<Dimension> SIZES = List.of(
            new Dimension(1024, 600),
            new Dimension(1366, 768),
            new Dimension(1920, 1080),
            new Dimension(960, 540),
            new Dimension(683, 384),
            new Dimension(512, 300));

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;
    private final Set<String> found = new LinkedHashSet<>();

    @BeforeAll
    static void longTexts() {
        LongTexts.write();
    }

    private void look(String state, Supplier<Component> where) {
        stage.settle();
        stage.run(() -> Unclipped.in(where.get()).forEach(what -> found.add(state + ": " + what)));
    }

    /** Once the views have been seen, nobody looks at the screen: each text of a form is drawn by itself. */
    private void lookAround(Locale locale, Piece piece, Theme theme, List<Dimension> sizes) {
        stage = Stage.open(window, locale, piece);
        stage.theme(theme);
        for (Dimension size : sizes) {
            stage.size(size.width, size.height);
            String at = size.width + "×" + size.height + ", ";
            stage.eachView(
                    state -> look(at + state, () -> stage.editor().frame().getRootPane()));
            stage.eachForm(state -> look(at + state, stage::forms));
        }
        assertNothingFound();
    }

    /** All themes have the same type, so that one is enough for all sizes; of the others the smallest screen tells. */
    private static List<Dimension> sizes(Theme theme) {
        return theme == Theme.LIGHT ? SIZES : List.of(SIZES.get(0));
    }

    private void assertNothingFound() {
        assertThat(found).as(String.join("\n", found)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void inEnglish(Theme theme) {
        lookAround(Locale.UK, Stage.ofAllKinds(), theme, List.of(SIZES.get(0)));
    }

    /** Longer texts tell of the other sizes. */
    @Test
    void inEnglishOnTheSmallestScreen() {
        lookAround(Locale.UK, Stage.ofAllKinds(), Theme.LIGHT, List.of(SIZES.get(SIZES.size() - 1)));
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void withTextsHalfAsLongAgain(Theme theme) {
        lookAround(LongTexts.LOCALE, Stage.ofAllKinds(), theme, sizes(theme));
    }

    @Test
    void ofATopThatFollows() {
        lookAround(LongTexts.LOCALE, Stage.demo("spring-tide-on-a-bar"), Theme.LIGHT, SIZES.subList(0, 1));
    }

    /** Menus are as large as they want to be; they have to fit on the smallest screen. */
    @Test
    void menusFitTheSmallestScreen() {
        for (Locale locale : List.of(Locale.UK, LongTexts.LOCALE)) {
            stage = Stage.open(window, locale, Stage.demo("saltmarsh-panel"));
            stage.run(() -> menus(stage.editor().frame().getJMenuBar()));
        }
        assertNothingFound();
    }

    private void menus(JMenuBar bar) {
        for (int i = 0; i < bar.getMenuCount(); i++) {
            menu(bar.getMenu(i));
        }
    }

    private void menu(JMenu menu) {
        JPopupMenu popup = menu.getPopupMenu();
        Dimension size = popup.getPreferredSize();
        if (size.height > 384 || size.width > 683) {
            found.add(menu.getText() + " is " + size);
        }
        for (JMenu inner : Stage.all(popup, JMenu.class, any -> true)) {
            menu(inner);
        }
    }

    /** Commands whose names end in dots ask something in a window of their own. */
    @Test
    void dialogsHaveRoomToo() {
        int seen = 0;
        for (Locale locale : List.of(Locale.UK, LongTexts.LOCALE)) {
            stage = Stage.open(window, locale, Stage.demo("saltmarsh-panel"));
            for (Object id : stage.ask(
                    () -> stage.editor().frame().getRootPane().getActionMap().keys())) {
                Action action = stage.ask(() ->
                        stage.editor().frame().getRootPane().getActionMap().get(id));
                String text = String.valueOf(action.getValue(Action.NAME));
                if (text.endsWith("…") && action.isEnabled()) {
                    seen += dialogs(id, action);
                }
            }
        }
        assertThat(seen).as("windows that were looked at").isGreaterThan(4);
        assertNothingFound();
    }

    private int dialogs(Object id, Action action) {
        List<Window> before = showing();
        java.awt.EventQueue.invokeLater(() -> action.actionPerformed(
                new java.awt.event.ActionEvent(stage.editor().frame(), 0, String.valueOf(id))));
        List<Window> opened = new ArrayList<>();
        long end = System.currentTimeMillis() + 4000;
        while (opened.isEmpty() && System.currentTimeMillis() < end) {
            org.assertj.swing.timing.Pause.pause(20);
            opened = showing();
            opened.removeAll(before);
        }
        int seen = 0;
        for (Window other : opened) {
            stage.robot().waitForIdle();
            boolean files = stage.ask(
                    () -> !Stage.all(other, JFileChooser.class, any -> true).isEmpty());
            if (!files) {
                seen++;
                stage.run(() -> fits(id, other));
                stage.run(() -> {
                    other.validate();
                    Unclipped.in(other).forEach(what -> found.add(id + ": " + what));
                });
            }
            stage.run(() -> {
                other.setVisible(false);
                other.dispose();
            });
        }
        return seen;
    }

    private void fits(Object id, Window other) {
        Dimension least = other.getMinimumSize();
        if (least.width > 1024 || least.height > 600) {
            found.add(id + ": doesn't get smaller than " + least);
        }
        other.setSize(Math.min(other.getWidth(), 1024), Math.min(other.getHeight(), 600));
    }

    /** Asked where windows are made, so that none is met half made. */
    private List<Window> showing() {
        return stage.ask(() -> new ArrayList<>(
                Stream.of(Window.getWindows()).filter(Window::isShowing).toList()));
    }

    /** What this test looks with does see what has no room. */
    @Test
    void whatHasNoRoomIsFound() {
        org.assertj.swing.edt.GuiActionRunner.execute(RoomForEverythingIT::findWhatHasNoRoom);
    }

    private static void findWhatHasNoRoom() {
        javax.swing.JPanel panel = new javax.swing.JPanel(null);
        javax.swing.JLabel label = new javax.swing.JLabel("Too long for its place");
        label.setBounds(0, 0, 40, 20);
        javax.swing.JLabel beyond = new javax.swing.JLabel("x");
        beyond.setBounds(90, 0, 30, 20);
        panel.add(label);
        panel.add(beyond);
        panel.setSize(100, 40);
        assertThat(Unclipped.in(panel))
                .anyMatch(what -> what.contains("Too long") && what.contains("wants to be"))
                .anyMatch(what -> what.contains("shortens to"))
                .anyMatch(what -> what.contains("wider than its holder"));
        label.setToolTipText("Too long for its place");
        assertThat(Unclipped.in(panel)).noneMatch(what -> what.contains("Too long"));
    }
}

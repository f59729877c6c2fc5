package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.ActionMap;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JRadioButton;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Block;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Seeds;
import thrumwright.testing.WindowTest;

/**
 * Does whatever can be done in a window, without rhyme or reason: commands, the mouse on the canvas, on the labels and on the
 * shelf, typing in every field. No exception may come of it (the extension sees to that), and all of it can be taken back.
 */
class RandomActionsIT {
    /** With each seed; in a long run twenty thousand with all of them. */
    private static final int ACTIONS = Seeds.of(5_000);

    /** So many happen before the window may paint. */
    private static final int AT_ONCE = 40;

    /** A piece with more blocks is made smaller, since every plan would take longer. */
    private static final int MOST_BLOCKS = 14;

    /** What opens another window, ends this one, needs what other programs use too, or is done apart. */
    private static final Set<String> NOT =
            Set.of("sheet", "save", "close", "close-all", "undo", "redo", "history", "copy", "cut", "paste");

    private static final List<String> TYPED = List.of(
            "6 picks",
            "3 rows",
            "12 mm",
            "1/2 in",
            "7",
            "0",
            "a few",
            "",
            "4/cm",
            "31 cm",
            "99999999",
            "15 %",
            "Marsh",
            "#336699");

    private enum Kind {
        COMMAND,
        MOUSE,
        TYPING,
        CHOICE,
        BACK_AND_FORTH
    }

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private RandomGenerator random;
    private final Map<Kind, Integer> done = new EnumMap<>(Kind.class);
    private EditorWindow editor;
    private Session session;
    private Hands hands;
    private PieceCanvas canvas;
    private LabelColumn labels;
    private JList<?> wares;
    private JTabbedPane tabs;
    private List<Action> commands;
    private MouseEvent pressed;

    private void open() {
        window.show(() -> {
            editor = Rooms.forgetful()
                    .open(new Session(new PieceFile(Stage.demo("first-wave"), Unknown.none()), Optional.empty()));
            return editor.frame();
        });
        session = editor.session();
        hands = new Hands(window, editor);
        canvas = hands.canvas();
        labels = hands.labels();
        wares = hands.find("wares", JList.class);
        tabs = hands.find("forms", JTabbedPane.class);
        commands = onEventThread(this::commands);
    }

    private List<Action> commands() {
        List<Action> all = new ArrayList<>();
        for (JComponent holder : List.of(editor.frame().getRootPane(), canvas)) {
            for (Object id : holder.getActionMap().keys()) {
                Action action = holder.getActionMap().get(id);
                String name = String.valueOf(action.getValue(Action.NAME));
                if (id.equals(action.getValue(Action.ACTION_COMMAND_KEY))
                        && !name.endsWith("…")
                        && !NOT.contains(String.valueOf(id))) {
                    all.add(action);
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(longs = {20_261_125, 20_261_126, 20_261_127, 20_261_128})
    void whateverIsDoneInTheWindowCanBeTakenBackAndDoneAgain(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        open();
        assertThat(commands).hasSizeGreaterThan(50);
        Piece first = onEventThread(session::piece);
        for (int i = 0; i < ACTIONS; i += AT_ONCE) {
            onEventThread(() -> {
                for (int j = 0; j < AT_ONCE; j++) {
                    act();
                }
                return null;
            });
            window.robot().waitForIdle();
        }
        assertThat(done.values())
                .as("%s", done)
                .hasSize(Kind.values().length)
                .allSatisfy(count -> assertThat(count).isGreaterThan(ACTIONS / 20));
        onEventThread(() -> {
            letGo();
            editor.takeOver();
            editor.desk().clear();
            all("redo", () -> session.history().redoName().isPresent());
            return null;
        });
        Piece last = onEventThread(session::piece);
        int steps = hands.steps();
        assertThat(steps).isGreaterThan(ACTIONS / 50);
        assertThat(last).isNotEqualTo(first);

        onEventThread(() -> all("undo", () -> session.history().undoName().isPresent()));
        assertThat(onEventThread(session::piece)).isEqualTo(first);
        assertThat(onEventThread(session::dirty)).isFalse();
        assertThat(onEventThread(() -> editor.frame().getTitle())).doesNotContain("not saved");

        onEventThread(() -> all("redo", () -> session.history().redoName().isPresent()));
        assertThat(onEventThread(session::piece)).isEqualTo(last);
        assertThat(onEventThread(session::shown)).isEqualTo(last);
        assertThat(hands.done()).isEqualTo(steps);
    }

    private Object all(String command, BooleanSupplier more) {
        while (more.getAsBoolean()) {
            run(editor.frame().getRootPane().getActionMap().get(command));
        }
        return null;
    }

    private void run(Action action) {
        if (action.isEnabled()) {
            action.actionPerformed(new ActionEvent(
                    canvas, ActionEvent.ACTION_PERFORMED, String.valueOf(action.getValue(Action.ACTION_COMMAND_KEY))));
        }
    }

    private void act() {
        if (session.piece().end(Place.START).blocks().size() > MOST_BLOCKS
                || session.piece().end(Place.TOP).blocks().size() > MOST_BLOCKS) {
            takeSomeAway();
            return;
        }
        Kind kind = kind();
        done.merge(kind, 1, Integer::sum);
        switch (kind) {
            case COMMAND -> run(any(commands));
            case MOUSE -> mouse();
            case TYPING -> type();
            case CHOICE -> choose();
            case BACK_AND_FORTH -> backAndForth();
        }
    }

    private void takeSomeAway() {
        letGo();
        Place place = session.piece().end(Place.START).blocks().size() > MOST_BLOCKS ? Place.START : Place.TOP;
        session.select(new Selection(
                place,
                session.piece().end(place).blocks().stream()
                        .map(Block::id)
                        .filter(id -> random.nextBoolean())
                        .toList()));
        run(canvas.getActionMap().get("delete"));
    }

    private Kind kind() {
        int of = random.nextInt(20);
        return of < 6
                ? Kind.COMMAND
                : of < 14 ? Kind.MOUSE : of < 16 ? Kind.TYPING : of < 18 ? Kind.CHOICE : Kind.BACK_AND_FORTH;
    }

    private <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** Never far back: what is done then takes the place of all that was to be done again. */
    private void backAndForth() {
        ActionMap window = editor.frame().getRootPane().getActionMap();
        switch (random.nextInt(5)) {
            case 0 -> {
                int to = session.history().done() + random.nextInt(5) - 2;
                session.jump(Math.max(0, Math.min(session.history().names().size(), to)));
            }
            case 1, 2 -> run(window.get("redo"));
            default -> run(window.get("undo"));
        }
    }

    /** One of press, move, let go and Escape; what was pressed may stay so while other things happen. */
    private void mouse() {
        if (pressed == null) {
            JComponent where = random.nextInt(4) == 0 ? labels : random.nextInt(8) == 0 ? wares : canvas;
            int button = random.nextInt(12) == 0 ? MouseEvent.BUTTON2 : MouseEvent.BUTTON1;
            Point point = point(where);
            int modifiers = (random.nextInt(6) == 0 ? InputEvent.CTRL_DOWN_MASK : 0)
                    | (random.nextInt(6) == 0 ? InputEvent.SHIFT_DOWN_MASK : 0)
                    | InputEvent.getMaskForButton(button);
            pressed = event(where, MouseEvent.MOUSE_PRESSED, modifiers, point, button, 1 + random.nextInt(5) / 4);
            where.dispatchEvent(pressed);
            return;
        }
        switch (random.nextInt(5)) {
            case 0 -> {
                Component where = pressed.getComponent();
                where.dispatchEvent(
                        new KeyEvent(where, KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_ESCAPE, KeyEvent.CHAR_UNDEFINED));
                run(canvas.getActionMap().get("select-none"));
            }
            case 1, 2 -> letGo();
            default -> drag();
        }
    }

    private void drag() {
        JComponent where = (JComponent) pressed.getComponent();
        Point to = random.nextBoolean()
                ? new Point(pressed.getX(), pressed.getY() + random.nextInt(161) - 80)
                : SwingUtilities.convertPoint(canvas, point(canvas), where);
        where.dispatchEvent(
                event(where, MouseEvent.MOUSE_DRAGGED, pressed.getModifiersEx(), to, MouseEvent.NOBUTTON, 0));
    }

    private void letGo() {
        if (pressed != null) {
            JComponent where = (JComponent) pressed.getComponent();
            where.dispatchEvent(event(
                    where,
                    MouseEvent.MOUSE_RELEASED,
                    0,
                    pressed.getPoint(),
                    pressed.getButton(),
                    pressed.getClickCount()));
            pressed = null;
        }
    }

    /** On the canvas and beside it mostly where a block or its edge is. */
    private Point point(JComponent where) {
        Rectangle seen = where.getVisibleRect();
        List<BlockSpot> spots = canvas.map().spots();
        int x = seen.x + random.nextInt(Math.max(1, seen.width));
        if (where == wares || spots.isEmpty() || random.nextInt(6) == 0) {
            return new Point(x, seen.y + random.nextInt(Math.max(1, seen.height)));
        }
        BlockSpot spot = any(spots);
        return new Point(x, (int) Math.round(random.nextInt(3) == 0 ? spot.top() : spot.middle()));
    }

    private static MouseEvent event(JComponent where, int id, int modifiers, Point point, int button, int clicks) {
        return new MouseEvent(where, id, 0, modifiers, point.x, point.y, clicks, false, button);
    }

    private JComponent form() {
        if (random.nextInt(8) == 0) {
            tabs.setSelectedIndex(random.nextInt(tabs.getTabCount()));
        }
        return (JComponent) tabs.getSelectedComponent();
    }

    private void type() {
        JComponent where = random.nextInt(4) == 0 ? labels : form();
        List<JTextField> fields = Stage.all(where, JTextField.class, field -> field.isEditable() && field.isEnabled());
        if (!fields.isEmpty()) {
            JTextField field = any(fields);
            field.setText(any(TYPED));
            if (random.nextInt(4) > 0) {
                field.postActionEvent();
            }
        }
    }

    private void choose() {
        List<JComponent> fields = Stage.all(
                form(),
                JComponent.class,
                field -> field.isEnabled()
                        && (field instanceof JComboBox || field instanceof JCheckBox || field instanceof JRadioButton));
        if (fields.isEmpty()) {
            return;
        }
        JComponent field = any(fields);
        if (field instanceof JComboBox<?> box && box.getItemCount() > 0) {
            box.setSelectedIndex(random.nextInt(box.getItemCount()));
        } else if (field instanceof AbstractButton button) {
            button.doClick(0);
        }
    }
}

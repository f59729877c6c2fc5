package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import java.awt.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Block;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** Rows of the list stay under the pointer, whatever is selected, changed, taken back or said. */
class SteadyRowsIT {
    private static final int DEEDS = 200;
    private static final long SEED = 20_160;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final Random random = new Random(SEED);
    private EditorWindow editor;
    private Hands hands;

    @Test
    void noRowMovesUnderThePointer() {
        window.show(() -> {
            editor = Rooms.forgetful().open(Optional.empty());
            return editor.frame();
        });
        hands = new Hands(window, editor);
        window.paintNoMore();
        for (int i = 0; i < DEEDS; i++) {
            Map<String, Integer> before = onEventThread(this::rows);
            String deed = onEventThread(this::something);
            window.robot().waitForIdle();
            Map<String, Integer> after = onEventThread(this::rows);
            before.keySet().retainAll(after.keySet());
            after.keySet().retainAll(before.keySet());
            assertThat(before).as("rows to look at").hasSizeGreaterThan(4);
            assertThat(after).as("deed %d: %s", i, deed).isEqualTo(before);
        }
    }

    /** The heights of all rows on the screen, by the end, how many rows lie between it and the design, and the block. */
    private Map<String, Integer> rows() {
        LabelColumn labels = hands.labels();
        int top = labels.getLocationOnScreen().y;
        Map<String, Integer> rows = new TreeMap<>();
        for (Place place : Place.values()) {
            List<Block> blocks = editor.session().shown().end(place).blocks();
            for (int i = 0; i < blocks.size(); i++) {
                String id = blocks.get(i).id();
                int number = place == Place.START ? blocks.size() - i : i;
                labels.amountBox(place, id)
                        .map(Rectangle::getCenterY)
                        .ifPresent(y -> rows.put(place + " " + number + " " + id, top + y.intValue()));
            }
        }
        return rows;
    }

    private String something() {
        Session session = editor.session();
        return switch (random.nextInt(10)) {
            case 0, 1, 2 -> select(session);
            case 3, 4 -> amount(session);
            case 5 -> edit("loom", piece -> piece.withLoom(piece.loom().withOpen(length(500 + random.nextInt(600)))));
            case 6 ->
                edit("design", piece -> piece.withDesign(piece.design().withHeight(length(100 + random.nextInt(300)))));
            case 7 -> run(random.nextBoolean() ? "undo" : "redo");
            case 8 -> say();
            default ->
                run(List.of("duplicate", "delete", "up", "top-own", "undo").get(random.nextInt(5)));
        };
    }

    private static Length length(int mm) {
        return Length.parse(mm + " mm");
    }

    private String select(Session session) {
        Place place = random.nextBoolean() ? Place.START : Place.TOP;
        List<Block> blocks = session.piece().end(place).blocks();
        String id = blocks.get(random.nextInt(blocks.size())).id();
        session.select(random.nextInt(8) == 0 ? Selection.none() : Selection.of(place, id));
        return "select " + id;
    }

    private String amount(Session session) {
        List<Block> blocks =
                session.piece().start().blocks().stream().filter(Amounts::has).toList();
        Block block = blocks.get(random.nextInt(blocks.size()));
        try {
            Block other = Amounts.with(block, String.valueOf(2 + random.nextInt(12)), session.piece(), Place.START);
            editor.edit(editor.desk().edits().amount(Place.START, other));
        } catch (IllegalArgumentException e) {
            editor.problem(e.getMessage());
        }
        return "amount of " + block.id();
    }

    private String edit(String name, java.util.function.UnaryOperator<Piece> change) {
        editor.edit(Edit.of(name, change));
        return name;
    }

    private String run(String command) {
        editor.session().endRun();
        hands.find("menu." + command, JMenuItem.class).doClick();
        return command;
    }

    private String say() {
        if (random.nextBoolean()) {
            editor.problem("The length must be more than nothing.");
        } else {
            editor.fault("Something went wrong. ".repeat(20), "details");
        }
        return "message";
    }
}

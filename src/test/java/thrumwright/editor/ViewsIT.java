package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextPane;
import javax.swing.UIManager;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.block.Amount;
import thrumwright.block.PlainBand;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.files.Questions;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Place;
import thrumwright.testing.WindowTest;

/** The views below the picture show the same plan and the same selection as the picture, whichever is changed. */
class ViewsIT {
    /** One length for both. */
    private static final String FACING = "Facing and Soumak";

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final Answers answers = new Answers();
    private Workroom room;
    private EditorWindow editor;
    private Hands hands;

    private void open() {
        window.show(() -> {
            room = Rooms.forgetful();
            editor = room.open(Optional.empty());
            editor.files().setQuestions(answers);
            return editor.frame();
        });
        hands = new Hands(window, editor);
    }

    private Selection selection() {
        return onEventThread(() -> editor.session().selection());
    }

    private void select(Place place, String... ids) {
        onEventThread(() -> {
            editor.session().select(new Selection(place, List.of(ids)));
            return null;
        });
        window.robot().waitForIdle();
    }

    private void makeFacingNinePicksHigh() {
        onEventThread(() -> {
            PlainBand facing = (PlainBand)
                    editor.session().piece().block(Place.START, "facing").orElseThrow();
            editor.edit(editor.desk().edits().amount(Place.START, facing.withAmount(new Amount.Picks(9))));
            return null;
        });
        window.robot().waitForIdle();
    }

    private static BufferedImage painted(JComponent component) {
        return onEventThread(() -> {
            BufferedImage image =
                    new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
            component.paint(image.getGraphics());
            return image;
        });
    }

    /** How many pixels of a column have the colour of what is selected. */
    private static long selected(BufferedImage image, int x, int from, int to) {
        int colour =
                onEventThread(() -> UIManager.getColor("Thrumwright.selected")).getRGB() & 0xffffff;
        return IntStream.range(from, to)
                .filter(y -> (image.getRGB(x, y) & 0xffffff) == colour)
                .count();
    }

    private List<Integer> rows(JTable table) {
        return onEventThread(() -> IntStream.of(table.getSelectedRows()).boxed().toList());
    }

    private int row(JTable table, String use, String end) {
        return onEventThread(() -> IntStream.range(0, table.getRowCount())
                .filter(row -> use.equals(table.getValueAt(row, 1)) && end.equals(table.getValueAt(row, 2)))
                .findFirst()
                .orElseThrow());
    }

    private void clickRow(JTable table, int row, int... held) {
        Point middle = onEventThread(() -> {
            table.scrollRectToVisible(table.getCellRect(row, 1, true));
            var cell = table.getCellRect(row, 1, true);
            return new Point((int) cell.getCenterX(), (int) cell.getCenterY());
        });
        for (int key : held) {
            window.robot().pressKey(key);
        }
        hands.click(table, middle);
        for (int key : held) {
            window.robot().releaseKey(key);
        }
        window.robot().waitForIdle();
    }

    @Test
    void linesOfTheCutListAndBlocksAreSelectedTogether() {
        open();
        hands.tab("Cut list");
        JTable cuts = hands.find("cuts", JTable.class);

        clickRow(cuts, row(cuts, "Stiff band", "top"));
        assertThat(selection()).isEqualTo(Selection.of(Place.TOP, "stiff"));
        clickRow(cuts, row(cuts, "Twining", "top"), KeyEvent.VK_CONTROL);
        assertThat(selection()).isEqualTo(new Selection(Place.TOP, List.of("stiff", "twining")));

        select(Place.START, "stiff", "facing");
        assertThat(rows(cuts)).containsExactly(row(cuts, "Stiff band", "start"), row(cuts, FACING, "start"));
        select(Place.START, "fold");
        assertThat(rows(cuts)).isEmpty();
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "fold"));

        select(Place.START, "facing");
        makeFacingNinePicksHigh();
        assertThat(rows(cuts)).containsExactly(row(cuts, FACING, "start"));
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "facing"));
    }

    /** What is sewn to the finished piece is for no block, so none is selected with it. */
    @Test
    void theLineOfACordAlongTheEdgeSelectsNoBlock() {
        open();
        onEventThread(() -> {
            EdgeCord cord = new EdgeCord(EdgeCord.Along.ENDS, Length.parse("4 mm"), false);
            editor.session()
                    .edit(Edit.of(
                            "Cord", piece -> piece.withDestiny(piece.destiny().withCord(Optional.of(cord)))));
            return null;
        });
        hands.tab("Cut list");
        JTable cuts = hands.find("cuts", JTable.class);
        select(Place.START, "facing");

        clickRow(cuts, row(cuts, "Cords along the edge", ""));

        assertThat(selection().isEmpty()).isTrue();
    }

    @Test
    void theCutListAndWhatEachYarnComesToFollowThePiece() {
        open();
        hands.tab("Cut list");
        JTable cuts = hands.find("cuts", JTable.class);
        Object before = onEventThread(() -> cuts.getValueAt(row(cuts, FACING, "start"), 4));
        List<String> yarns = words(cuts.getParent());
        assertThat(yarns).anyMatch(line -> line.startsWith("Tide teal: "));

        makeFacingNinePicksHigh();

        assertThat(onEventThread(() -> cuts.getValueAt(row(cuts, FACING, "start"), 4)))
                .isNotEqualTo(before);
        assertThat(words(cuts.getParent())).hasSameSizeAs(yarns).isNotEqualTo(yarns);
    }

    private static List<String> words(Container container) {
        return onEventThread(() -> {
            List<String> all = new ArrayList<>();
            for (Component child : container.getComponents()) {
                if (child instanceof JTextComponent text) {
                    all.add(text.getText());
                }
            }
            return all;
        });
    }

    private static String text(JTextPane steps) {
        return onEventThread(
                () -> steps.getDocument().getText(0, steps.getDocument().getLength()));
    }

    /** Where a word stands, for the first time after another. */
    private static Point where(JTextPane steps, String word, String after) {
        return onEventThread(() -> {
            String all = text(steps);
            int at = all.indexOf(word, all.indexOf(after));
            var box = steps.modelToView2D(at);
            steps.scrollRectToVisible(box.getBounds());
            return new Point((int) box.getX() + 2, (int) box.getCenterY());
        });
    }

    /** Whether there is a bar at the left of that line. */
    private static boolean isMarked(JTextPane steps, Point line) {
        return selected(painted(steps), 1, line.y - 2, line.y + 3) == 5;
    }

    @Test
    void stepsAreLiveAndShareTheSelection() throws BadLocationException {
        open();
        hands.tab("Steps");
        JTextPane steps = hands.find("steps", JTextPane.class);
        assertThat(text(steps)).contains("6 picks in all").doesNotContain("9 picks in all");

        hands.click(steps, where(steps, "Twining", "The start"));
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "twining"));
        assertThat(isMarked(steps, where(steps, "Twining", "The start"))).isTrue();
        assertThat(isMarked(steps, where(steps, "Stiff band", "The start"))).isFalse();

        hands.key(KeyEvent.VK_DOWN);
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "stiff"));
        assertThat(isMarked(steps, where(steps, "Stiff band", "The start"))).isTrue();
        hands.key(KeyEvent.VK_UP);
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "twining"));

        select(Place.TOP, "facing");
        assertThat(isMarked(steps, where(steps, "Facing. Samphire green", "\nThe top\n")))
                .isTrue();
        assertThat(isMarked(steps, where(steps, "Twining", "The start"))).isFalse();

        makeFacingNinePicksHigh();
        assertThat(text(steps)).contains("9 picks in all");
    }

    private void arrows(int key, String id) {
        hands.key(key);
        assertThat(selection().lead()).contains(id);
    }

    @Test
    void theWarpIsLiveToScaleAndSharesTheSelection() {
        open();
        hands.tab("Warp");
        JComponent warp = hands.find("budget", JComponent.class);
        assertThat(description(warp))
                .contains("Start 3 cm", "Design 32 cm", "To spare 12.3 cm", "lower bar", "upper bar 70 cm");

        // the waste band of the start lies between 6.24 and 7.44 of the 70 cm between the bars
        int middle = (int) Math.round(24 + (warp.getWidth() - 48) * 6.84 / 70);
        hands.click(warp, new Point(middle, onBar(warp, middle)));
        assertThat(selection()).isEqualTo(Selection.of(Place.START, "waste"));
        assertThat(framed(warp)).isEqualTo(middle, org.assertj.core.api.Assertions.within(3.0));

        arrows(KeyEvent.VK_RIGHT, "twining");
        arrows(KeyEvent.VK_LEFT, "waste");
        arrows(KeyEvent.VK_LEFT, "ordering");

        // that of the top ends where the room to spare begins
        select(Place.TOP, "waste");
        assertThat(framed(warp))
                .isEqualTo(24 + (warp.getWidth() - 48) * 43.1 / 70, org.assertj.core.api.Assertions.within(4.0));

        makeFacingNinePicksHigh();
        assertThat(description(warp)).contains("Start 3.3 cm").doesNotContain("To spare 12.3 cm");
    }

    private static String description(JComponent component) {
        return onEventThread(() -> component.getAccessibleContext().getAccessibleDescription());
    }

    /** A height at which the waste band's colour is painted. */
    private static int onBar(JComponent warp, int x) {
        BufferedImage image = painted(warp);
        int brown = new Color(0x8a6f57).getRGB();
        return IntStream.range(0, image.getHeight())
                        .filter(y -> near(image.getRGB(x, y), brown))
                        .findFirst()
                        .orElseThrow()
                + 4;
    }

    private static boolean near(int one, int other) {
        Color a = new Color(one);
        Color b = new Color(other);
        return Math.abs(a.getRed() - b.getRed())
                        + Math.abs(a.getGreen() - b.getGreen())
                        + Math.abs(a.getBlue() - b.getBlue())
                < 60;
    }

    /** The middle of the frame round what is selected; the frame round the whole view is left out. */
    private static double framed(JComponent warp) {
        BufferedImage image = painted(warp);
        int[] edges = IntStream.range(6, image.getWidth() - 6)
                .filter(x -> selected(image, x, 6, image.getHeight() - 6) > 10)
                .toArray();
        return edges.length == 0 ? -1 : (edges[0] + edges[edges.length - 1]) / 2.0;
    }

    @Test
    void bothEndsMarkTheSelectedPairAndTheirButtonKeepsTheKeyboard() {
        open();
        hands.tab("Both ends");
        JComponent stiff = hands.find("pair.stiff", JComponent.class);
        assertThat(selected(painted(stiff), 1, 0, stiff.getHeight())).isZero();
        select(Place.TOP, "stiff");
        assertThat(selected(painted(stiff), 1, 0, stiff.getHeight())).isEqualTo(stiff.getHeight());

        JButton own = hands.find("ends.top-own", JButton.class);
        onEventThread(own::requestFocusInWindow);
        hands.waitForFocus("ends.top-own");
        hands.key(KeyEvent.VK_SPACE);
        hands.waitForFocus("ends.top-follows");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isFalse();
        hands.key(KeyEvent.VK_SPACE);
        hands.waitForFocus("ends.top-own");
        assertThat(onEventThread(() -> editor.session().piece().topFollows())).isTrue();
    }

    @Test
    void keysReachEveryViewAndLeaveItAgain() {
        open();
        hands.key(KeyEvent.VK_2, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("cuts");
        hands.key(KeyEvent.VK_DOWN);
        assertThat(selection().isEmpty()).isFalse();
        hands.key(KeyEvent.VK_TAB);
        waitFor(
                "the keyboard to leave the list",
                () -> onEventThread(() -> !hands.find("cuts", JTable.class).isFocusOwner()));
        hands.key(KeyEvent.VK_5, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("budget");
        hands.key(KeyEvent.VK_6, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("steps");
        hands.key(KeyEvent.VK_4, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("ends.top-own");
    }

    @Test
    void theKeyThatMovesABlockMovesItWhereverTheKeyboardIs() {
        open();
        select(Place.START, "facing");
        int before = hands.ids(Place.START).indexOf("facing");
        JTextComponent amount = hands.find("field.block.amount", JTextComponent.class);
        onEventThread(amount::requestFocusInWindow);
        hands.waitForFocus("field.block.amount");
        hands.key(KeyEvent.VK_UP, KeyEvent.VK_CONTROL);
        assertThat(hands.ids(Place.START).indexOf("facing")).isEqualTo(before + 1);
        hands.key(KeyEvent.VK_2, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("cuts");
        hands.key(KeyEvent.VK_3, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        hands.waitForFocus("views");
        hands.key(KeyEvent.VK_DOWN, KeyEvent.VK_CONTROL);
        assertThat(hands.ids(Place.START).indexOf("facing")).isEqualTo(before);
    }

    @Test
    void theMenuShowsWhatIsOn() {
        open();
        assertThat(isOn("rules")).isTrue();
        hands.ctrl(KeyEvent.VK_R);
        assertThat(isOn("rules")).isFalse();
        boolean open = isOn("shelf-fold");
        hands.key(KeyEvent.VK_B, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(isOn("shelf-fold")).isEqualTo(!open);
    }

    private boolean isOn(String id) {
        return onEventThread(() -> hands.find("menu." + id, JMenuItem.class).isSelected());
    }

    @Test
    void theFormSaysWhoseFieldsItHolds() throws Exception {
        open();
        select(Place.START, "twining");
        assertThat(heading()).isEqualTo("Twining, start, block 3 of 7");
        onEventThread(() -> {
            Selection selection = editor.session().selection();
            editor.edit(editor.desk().edits().move(editor.session().piece(), selection, 1));
            return null;
        });
        window.robot().waitForIdle();
        assertThat(heading()).isEqualTo("Twining, start, block 4 of 7");
        select(Place.TOP, "facing");
        assertThat(heading()).isEqualTo("Facing, top, block 3 of 6");
    }

    private String heading() {
        return onEventThread(() -> hands.find("heading", JTextComponent.class).getText());
    }

    @Test
    void allWindowsCloseAtOnceUnlessOneIsToStay() throws Exception {
        open();
        onEventThread(() -> {
            room.open(Optional.empty()).show();
            return null;
        });
        makeFacingNinePicksHigh();
        answers.closing = Questions.Closing.STAY;
        onEventThread(() -> {
            room.closeAll();
            return null;
        });
        assertThat(onEventThread(() -> room.windows().size())).isEqualTo(2);

        answers.closing = Questions.Closing.LEAVE;
        onEventThread(() -> {
            room.closeAll();
            return null;
        });
        assertThat(onEventThread(() -> room.windows())).isEmpty();
    }
}

package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Frame;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.library.Library;
import thrumwright.editor.look.Theme;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Place;
import thrumwright.store.BuiltIn;
import thrumwright.store.Structures;
import thrumwright.testing.RealScreenOnly;
import thrumwright.testing.WindowTest;

/** What the window keeps from one time to the next, and how it comes up. */
class FrameIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final Locale usual = Locale.getDefault(Locale.Category.FORMAT);
    private Workroom room;
    private EditorWindow editor;
    private FrameFixture frame;
    private Hands hands;

    @AfterEach
    void numbersAsBefore() {
        Locale.setDefault(Locale.Category.FORMAT, usual);
    }

    private Settings settings() {
        return new Settings(Optional.of(folder.resolve("settings.properties")));
    }

    /** As after a new start of the program. */
    private void start(Optional<Path> file) {
        onEventThread(() -> {
            room = Rooms.with(settings());
            editor = room.open(file);
            editor.show();
            return null;
        });
        frame = window.frame("editor");
        hands = new Hands(window, editor);
    }

    private void close() {
        hands.ctrl(KeyEvent.VK_W);
        waitFor("the window to close", () -> onEventThread(() -> !editor.frame().isDisplayable()));
    }

    private Path piece(String name) throws Exception {
        return Files.writeString(folder.resolve(name + ".json"), BuiltIn.DEMO.text(name + ".json"));
    }

    private static String title(FrameFixture frame) {
        return onEventThread(() -> frame.target().getTitle());
    }

    private String title() {
        return onEventThread(() -> editor.session().piece().title());
    }

    /** As if the window had been opened in it. */
    @Test
    void anotherThemeLeavesHeadingsAndHintsAsTheyWere() {
        start(Optional.empty());
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            room.place().setTheme(Theme.DARK);
            return null;
        });
        List<String> switched = onEventThread(this::looks);
        close();
        start(Optional.empty());
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            return null;
        });
        assertThat(onEventThread(() -> room.place().theme())).isEqualTo(Theme.DARK);
        assertThat(onEventThread(this::looks)).hasSizeGreaterThan(10).isEqualTo(switched);
        onEventThread(() -> {
            room.place().setTheme(Theme.LIGHT);
            return null;
        });
    }

    /** Font and colour of every text in the form that is seen. */
    private List<String> looks() {
        List<String> looks = new ArrayList<>();
        addLooks((Container) frame.tabbedPane("forms").target().getSelectedComponent(), looks);
        return looks;
    }

    private static void addLooks(Container in, List<String> looks) {
        for (Component child : in.getComponents()) {
            String text = child instanceof JLabel label
                    ? label.getText()
                    : child instanceof JTextComponent words ? words.getText() : "";
            if (!text.isEmpty()) {
                looks.add(text + ": " + child.getFont() + ", " + child.getForeground());
            }
            if (child instanceof Container inner) {
                addLooks(inner, looks);
            }
        }
    }

    /** However often the program is started: a window that wanders is soon gone. */
    @Test
    void theWindowComesUpWhereItWasAndAsLargeAsItWas() {
        start(Optional.empty());
        Rectangle wanted = new Rectangle(60, 50, 1010, 640);
        onEventThread(() -> {
            editor.frame().setBounds(wanted);
            return null;
        });
        waitFor(
                "the window to lie there",
                () -> onEventThread(() -> editor.frame().getBounds()).equals(wanted));
        for (int i = 0; i < 3; i++) {
            close();
            start(Optional.empty());
            assertThat(onEventThread(() -> editor.frame().getBounds())).isEqualTo(wanted);
        }
    }

    /** The screen may be a smaller one the next time, or stand elsewhere. */
    @ParameterizedTest
    @ValueSource(strings = {"60,50,9000,9000,0", "-9000,-40,1010,640,0", "900,700,1310,840,0", "9000,20,1010,640,0"})
    void noPartOfTheWindowComesUpBesideTheScreen(String kept) {
        settings().put("window", kept);
        start(Optional.empty());
        Rectangle screen =
                onEventThread(() -> editor.frame().getGraphicsConfiguration().getBounds());
        assertThat(screen.contains(onEventThread(() -> editor.frame().getBounds())))
                .as("%s in %s", onEventThread(() -> editor.frame().getBounds()), screen)
                .isTrue();
    }

    /** Once it no longer fills the screen it is as it was before. Here no window can really fill the screen. */
    @Test
    void aWindowThatFillsTheScreenKeepsWhatItWasBefore() {
        onEventThread(() -> {
            new Geometry(settings()).remember(frame(new Rectangle(60, 50, 1010, 640), Frame.NORMAL));
            new Geometry(settings()).remember(frame(new Rectangle(0, 0, 1600, 1000), Frame.MAXIMIZED_BOTH));
            return null;
        });
        assertThat(settings().get("window")).contains("60,50,1010,640,1");

        onEventThread(() -> {
            new Geometry(settings()).remember(frame(new Rectangle(70, 50, 1010, 640), Frame.MAXIMIZED_HORIZ));
            return null;
        });
        assertThat(settings().get("window")).contains("70,50,1010,640,0");
    }

    private static JFrame frame(Rectangle bounds, int state) {
        JFrame frame = new JFrame() {
            private static final long serialVersionUID = 1L;

            @Override
            public int getExtendedState() {
                return state;
            }
        };
        frame.setBounds(bounds);
        return frame;
    }

    /** While the first is open, so that both can be seen. */
    @Test
    void aSecondWindowDoesNotCoverTheFirst() {
        start(Optional.empty());
        Rectangle first = onEventThread(() -> editor.frame().getBounds());
        Rectangle second =
                onEventThread(() -> room.open(Optional.empty()).frame().getBounds());
        assertThat(second.getLocation()).isNotEqualTo(first.getLocation());
        assertThat(second.getSize()).isEqualTo(first.getSize());
    }

    @Test
    void aFileIsOpenedAgainFromTheMenuOfThoseUsedLast() throws Exception {
        Path marsh = piece("first-wave");
        Path reed = piece("reed-bed-fringe");
        start(Optional.of(marsh));
        String first = title();
        close();
        start(Optional.of(reed));
        assertThat(title()).isNotEqualTo(first);
        close();
        start(Optional.empty());

        hands.choose("menu.file", "recent");
        waitFor("the menu of both files", () -> recent().size() == 2);
        assertThat(recent().get(0)).startsWith("reed-bed-fringe.json");
        frame.robot()
                .click(frame.robot()
                        .finder()
                        .find(component -> component instanceof JMenuItem item
                                && item.isShowing()
                                && item.getText().startsWith("first-wave.json")));
        frame.robot().waitForIdle();

        waitFor("the file", () -> title().equals(first));
    }

    private List<String> recent() {
        return frame
                .robot()
                .finder()
                .findAll(component -> component instanceof JMenuItem item
                        && item.isShowing()
                        && item.getText().contains(".json"))
                .stream()
                .map(item -> onEventThread(((JMenuItem) item)::getText))
                .sorted((one, other) -> Integer.compare(0, one.startsWith("reed") ? 1 : 0))
                .toList();
    }

    private static void start(Settings settings) {
        onEventThread(() -> {
            EditorApp.open(
                    Optional.empty(),
                    settings,
                    Library.fixed(Structures.builtIn().all()));
            return null;
        });
    }

    /** One press leads from nothing to a living piece, which can be changed at once. */
    @Test
    void theFirstStartAsksByPicturesWhatToBeginWith() {
        start(settings());
        DialogFixture welcome = window.dialog("welcome");
        welcome.button("welcome.own").requireEnabled();
        welcome.button("welcome.open").requireEnabled();
        welcome.button("welcome.demo").requireEnabled();
        welcome.button("welcome.first-panel").click();

        frame = window.frame("editor");
        waitFor("the first panel", () -> title(frame).contains("fringe"));
        assertThat(title(frame)).doesNotContain("not saved");
        waitFor(
                "the keyboard at the piece",
                () -> onEventThread(() -> frame.target().getFocusOwner() != null
                        && "canvas".equals(frame.target().getFocusOwner().getName())));
        window.press(KeyEvent.VK_END);
        window.press(KeyEvent.VK_UP);
        window.press(KeyEvent.VK_DELETE);

        assertThat(title(frame)).contains("not saved");
    }

    @Test
    void laterStartsOpenTheLastPiece() throws IOException {
        Settings settings = settings();
        settings.used(Files.writeString(folder.resolve("wave.thrum"), BuiltIn.DEMO.text("first-wave.json")));
        settings.used(folder.resolve("gone.thrum"));
        start(settings);
        frame = window.frame("editor");
        assertThat(title(frame)).startsWith("First wave");
        assertThat(onEventThread(() ->
                        Stream.of(Window.getWindows()).filter(Window::isShowing).toList()))
                .noneMatch(Dialog.class::isInstance);
    }

    /** The decimal sign of the place in labels, rules, the line at the bottom, fields and the number that is typed. */
    @Test
    void numbersOnScreenHaveTheDecimalSignOfThePlace() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
        start(Optional.empty());
        onEventThread(() -> {
            editor.session().select(Selection.of(Place.START, "facing"));
            return null;
        });
        String status = onEventThread(() -> hands.find("status", JLabel.class).getText());
        assertThat(status).matches(".*\\d,\\d.*").doesNotMatch(".*\\d\\.\\d.*");
        assertThat(onEventThread(() -> hands.labels()
                        .wording(Place.START, "twining")
                        .orElseThrow()
                        .height()))
                .matches(".*\\d,\\d.*")
                .doesNotMatch(".*\\d\\.\\d.*");

        hands.focusCanvas();
        hands.key(KeyEvent.VK_F2);
        hands.waitForFocus("amountEntry");
        hands.ctrl(KeyEvent.VK_A);
        hands.type("12,5 mm");
        hands.key(KeyEvent.VK_ENTER);
        hands.waitForFocus("canvas");
        assertThat(onEventThread(() -> Amounts.text(
                        editor.session().piece().start().block("facing").orElseThrow())))
                .isEqualTo("12,5 mm");
    }

    /** Wherever it is let go: views that are made when they are first seen let it through, too. */
    @ParameterizedTest
    @ValueSource(strings = {"canvas", "labels", "steps", "cuts", "history", "wares", "status"})
    @RealScreenOnly
    void aFileDroppedOnTheWindowIsOpened(String where) throws Exception {
        Path file = piece("first-wave");
        onEventThread(() -> {
            room = Rooms.with(settings());
            editor = room.open(Optional.empty());
            editor.frame().setBounds(0, 0, 1150, 860);
            editor.show();
            return null;
        });
        frame = window.frame("editor");
        hands = new Hands(window, editor);
        String before = title();
        if (where.equals("cuts")) {
            hands.key(KeyEvent.VK_2, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        } else if (where.equals("steps")) {
            hands.key(KeyEvent.VK_6, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        } else if (where.equals("history")) {
            hands.ctrl(KeyEvent.VK_H);
        }
        JComponent target = hands.find(where, JComponent.class);
        assertThat(onEventThread(target::isShowing)).isTrue();
        JComponent files = folderWith(file);

        hands.press(files, new Point(40, 40));
        Point there = onEventThread(() -> {
            Rectangle seen = target.getVisibleRect();
            return new Point(seen.x + Math.min(60, seen.width / 2), seen.y + Math.min(40, seen.height / 2));
        });
        hands.dragTo(target, there);
        Pause.pause(300);
        hands.release();

        waitFor("the file", () -> !title().equals(before));
        assertThat(onEventThread(() -> editor.session().path())).contains(file);
    }

    /** As in a file manager. */
    private static JComponent folderWith(Path file) {
        return onEventThread(() -> {
            JLabel label = new JLabel("a file");
            label.setTransferHandler(new TransferHandler() {
                private static final long serialVersionUID = 1L;

                @Override
                public int getSourceActions(JComponent component) {
                    return COPY;
                }

                @Override
                protected Transferable createTransferable(JComponent component) {
                    return new Dropped(file);
                }
            });
            label.addMouseMotionListener(new MouseAdapter() {
                @Override
                public void mouseDragged(MouseEvent event) {
                    label.getTransferHandler().exportAsDrag(label, event, TransferHandler.COPY);
                }
            });
            JFrame folder = new JFrame();
            folder.add(label);
            folder.setBounds(1200, 100, 200, 150);
            folder.setVisible(true);
            return label;
        });
    }

    private record Dropped(Path file) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return DataFlavor.javaFileListFlavor.equals(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return List.of(file.toFile());
        }
    }
}

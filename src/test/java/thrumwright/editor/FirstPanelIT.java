package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.RootPaneContainer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.testing.WindowTest;

/**
 * The first panel as the docs tell it, from the first start to its printed cards: each numbered step is one action, done
 * here in the same order, and the pictures are taken on the way. {@code -Dgolden.accept=true} takes new ones.
 */
class FirstPanelIT {
    private static final Path TOLD = Path.of("docs", "first-panel.md");

    /** So many actions at most from the first start to cards of an own piece. */
    private static final int AT_MOST = 12;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private final List<String> steps = steps();
    private EditorWindow editor;
    private int done;

    private static List<String> steps() {
        List<String> steps = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(TOLD)) {
                if (line.matches("\\d+\\. .*")) {
                    assertThat(line).startsWith(steps.size() + 1 + ". ");
                    steps.add(line);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return steps;
    }

    /** One thing that a weaver does, which the next step of the docs must name. */
    private void act(String named, Runnable action) {
        assertThat(steps).as("steps told").hasSizeGreaterThan(done);
        assertThat(steps.get(done++)).contains(named);
        action.run();
        window.robot().waitForIdle();
    }

    private void firstStart() {
        window.show(() -> {
            Workroom room = Rooms.forgetful();
            Workroom.ToOpen nothing = Workroom.nothing();
            editor = room.begin(nothing);
            room.finish(editor, nothing);
            editor.files().setQuestions(new Dialogs(editor.frame(), room.place(), folder));
            return editor.frame();
        });
        onEventThread(() -> {
            editor.frame().setSize(1200, 780);
            editor.frame().validate();
            return null;
        });
        window.settle(editor.frame());
        EventQueue.invokeLater(editor::askFirst);
    }

    @Test
    void fromTheFirstStartToPrintedCards() throws IOException {
        firstStart();
        begin();
        makeItYours();
        print();
        assertThat(done).isEqualTo(steps.size()).isLessThanOrEqualTo(AT_MOST);
        assertThat(written()).contains("Tide line", "Twining", "knot");
    }

    private void begin() throws IOException {
        DialogFixture welcome = window.dialog("welcome");
        look("first-panel-1", inside(welcome.target()));
        act("A piece of your own", () -> welcome.button("welcome.own").click());
        DialogFixture begin = window.dialog("begin");
        act("knotted fringe", () -> begin.textBox("structureSearch").enterText("knotted fringe"));
        look("first-panel-2", inside(begin.target()));
        act("Begin with this", () -> begin.button("beginWithIt").click());
        waitFor(
                "the piece",
                () -> onEventThread(
                        () -> !editor.session().piece().start().blocks().isEmpty()));
    }

    private void makeItYours() throws IOException {
        FrameFixture frame = new FrameFixture(window.robot(), editor.frame());
        act("Piece", () -> frame.tabbedPane("forms").selectTab("Piece"));
        act("Tide line", () -> window.typeOver(frame, "field.title", "Tide line"));
        act("Loom", () -> frame.tabbedPane("forms").selectTab("Loom"));
        act("20 cm", () -> window.typeOver(frame, "field.warp.width", "20 cm"));
        assertThat(onEventThread(() -> editor.session().piece().title())).isEqualTo("Tide line");
        window.settle(editor.frame());
        look("first-panel-3", inside(editor.frame()));
    }

    private void print() throws IOException {
        act(
                "Step sheet",
                () -> new FrameFixture(window.robot(), editor.frame())
                        .button("tool.sheet")
                        .click());
        FrameFixture sheet = window.frame("sheet");
        waitFor(
                "a painted page",
                () -> onEventThread(() -> editor.sheet().view().painted()));
        look("first-panel-4", inside(sheet.target()));
        waitFor(
                "export to be possible",
                () -> onEventThread(
                        () -> sheet.button("tool.sheet-export").target().isEnabled()));
        act("Export…", () -> sheet.button("tool.sheet-export").click());
        act("Write", () -> window.files().approve());
    }

    private String written() throws IOException {
        waitFor("the file", () -> !pdfs().isEmpty() && editorRests());
        try (PDDocument document = Loader.loadPDF(pdfs().get(0).toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private boolean editorRests() {
        return onEventThread(() -> !window.robot()
                .finder()
                .findByName(editor.sheet().frame(), "job", false)
                .isVisible());
    }

    private List<Path> pdfs() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".pdf")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Without what a screen draws round a window. */
    private static Component inside(Window shown) {
        return ((RootPaneContainer) shown).getContentPane();
    }

    private void look(String name, Component shown) throws IOException {
        waitFor("the picture " + name, () -> onEventThread(() -> WindowTest.sharp((java.awt.Container) shown)));
        PicturesIT.check(name, onEventThread(() -> {
            BufferedImage picture = new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = picture.createGraphics();
            shown.paint(g);
            g.dispose();
            return picture;
        }));
    }
}

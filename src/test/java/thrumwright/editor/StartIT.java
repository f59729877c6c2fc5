package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.store.BuiltIn;
import thrumwright.store.Structures;
import thrumwright.testing.WindowTest;

/** At a start the piece is painted first; what stands around it comes after that and moves nothing. */
class StartIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path folder;

    private EditorWindow editor;
    private final List<Seen> seen = new ArrayList<>();

    /** What there is of a window. */
    private record Seen(
            Rectangle picture, double scale, Rectangle list, boolean listed, int menus, int buttons, boolean shelf) {}

    private Seen seen() {
        PieceCanvas canvas = (PieceCanvas) named(editor.frame(), "canvas").orElseThrow();
        Component labels = named(editor.frame(), "labels").orElseThrow();
        return new Seen(
                SwingUtilities.convertRectangle(canvas, canvas.getVisibleRect(), editor.frame()),
                canvas.scale(),
                labels.getBounds(),
                says(labels),
                editor.frame().getJMenuBar().getMenu(0).getItemCount(),
                ((Container) named(editor.frame(), "tools").orElseThrow()).getComponentCount(),
                named(editor.frame(), "wares").isPresent());
    }

    /** Whether there is more to be seen of it than its ground. */
    private static boolean says(Component component) {
        BufferedImage image =
                new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        component.paint(image.getGraphics());
        int[] colours = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return IntStream.of(colours).distinct().count() > 1;
    }

    /** A robot would wait for the event from which this is asked. */
    private static Optional<Component> named(Container within, String name) {
        return Stream.of(within.getComponents())
                .flatMap(each -> name.equals(each.getName())
                        ? Stream.of(each)
                        : each instanceof Container inner ? named(inner, name).stream() : Stream.empty())
                .findFirst();
    }

    private void start(Settings settings) {
        onEventThread(() -> {
            Workroom room = Rooms.with(settings);
            editor = room.begin(Workroom.demo());
            editor.outline().forEach(Runnable::run);
            editor.show(() -> {
                seen.add(seen());
                editor.rest().forEach(Runnable::run);
            });
            return null;
        });
        window.frame("editor");
        waitFor(
                "all parts",
                () -> onEventThread(
                        () -> editor.frame().getJMenuBar().getMenu(0).getItemCount() > 0));
        window.robot().waitForIdle();
        seen.add(onEventThread(this::seen));
    }

    /** With the views folded away or open, in a usual and in a low window. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "window.views.open=false",
                "window.views.open=true",
                "window.fields.away=true",
                "window=10,10,1366,700,0"
            })
    void thePictureStaysWhereItIsWhileTheRestComes(String kept) {
        Settings settings = new Settings(Optional.empty());
        String[] parts = kept.split("=");
        settings.putAll(Map.of(parts[0], parts[1]));

        start(settings);

        Seen first = seen.get(0);
        Seen whole = seen.get(1);
        assertThat(first.menus()).isZero();
        assertThat(first.buttons()).isZero();
        assertThat(first.shelf()).isFalse();
        assertThat(first.listed()).isFalse();
        assertThat(first.scale()).isGreaterThan(0);
        assertThat(whole.menus()).isGreaterThan(5);
        assertThat(whole.buttons()).isGreaterThan(15);
        assertThat(whole.shelf()).isTrue();
        assertThat(whole.listed()).isTrue();
        assertThat(whole.list()).isEqualTo(first.list());
        assertThat(whole.picture()).isEqualTo(first.picture());
        assertThat(whole.scale()).isEqualTo(first.scale());
    }

    /** As the program does it, from a file to a window that answers. */
    @Test
    void aStartEndsWithAWholeWindow() throws Exception {
        Path file = folder.resolve("creek.thrum");
        Files.writeString(file, BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));

        onEventThread(() -> {
            EditorApp.open(
                    Optional.of(file),
                    new Settings(Optional.empty()),
                    Library.fixed(Structures.builtIn().all()));
            return null;
        });

        var frame = window.frame("editor");
        waitFor(
                "the keys",
                () -> onEventThread(() ->
                        ((JFrame) frame.target()).getRootPane().getActionMap().get("undo") != null));
        assertThat(onEventThread(() -> frame.target().getTitle()))
                .contains("Saltmarsh")
                .doesNotContain("not saved");
        frame.button("tool.sheet").requireVisible().requireEnabled();
        frame.list("wares").requireVisible();
        frame.button("tool.undo").requireDisabled();
    }
}

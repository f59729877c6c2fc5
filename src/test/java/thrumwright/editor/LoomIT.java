package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.editor.files.Questions.Recovering;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.plan.Plan;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;
import thrumwright.store.BuiltIn;
import thrumwright.store.keeping.Keeper;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;

/** Weaves at the loom: with keys alone, with the mouse alone, and on after the program was killed. */
class LoomIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @TempDir
    Path home;

    private final Answers answers = new Answers();
    private Keeper keeper;
    private EditorWindow editor;
    private FrameFixture loom;
    private Component view;

    private Path wave() throws Exception {
        return Files.writeString(home.resolve("wave.json"), BuiltIn.DEMO.text("first-wave.json"));
    }

    private void open(Path state, Optional<Path> file) {
        keeper = Keeper.in(state);
        window.show(() -> {
            Workroom room = new Workroom(
                    still(), Rooms.LIBRARY, Locale.UK, new Keeping(keeper, Optional.empty(), Optional.empty()));
            editor = room.open(file);
            editor.files().setQuestions(answers);
            return editor.frame();
        });
    }

    private static Settings still() {
        Settings settings = new Settings(Optional.empty());
        settings.put("loom.moving", "false");
        return settings;
    }

    private void toTheLoom() {
        new Hands(window, editor).key(KeyEvent.VK_L, KeyEvent.VK_CONTROL);
        loom = window.frame("loomWindow");
        waitFor(
                "the keyboard at the loom",
                () -> onEventThread(() -> loom.target().isFocused()));
        view = loom.robot().finder().findByName(loom.target(), "loom.view");
    }

    /** A long way, on which nothing is looked at but what is said. */
    private void unseen() {
        window.paintNoMore();
    }

    private Piece piece() {
        return onEventThread(() -> editor.session().piece());
    }

    private String seen() {
        return onEventThread(() -> view.getAccessibleContext().getAccessibleName());
    }

    /** Goes on until all is done, and notes what is seen on the way. */
    private List<String> weave(Runnable on) {
        List<String> seen = new ArrayList<>();
        String now = seen();
        while (!now.startsWith("All steps are done")) {
            seen.add(now);
            on.run();
            assertThat(seen).as("goes on").hasSizeLessThan(1000);
            now = seen();
            assertThat(now).isNotEqualTo(seen.get(seen.size() - 1));
        }
        return seen;
    }

    private void everyStepWasSeen(List<String> seen) {
        LoomSheet sheet = LoomSheet.of(Plan.of(piece()), Locale.UK);
        for (LoomStep step : sheet.steps()) {
            List<String> ofStep =
                    seen.stream().filter(text -> text.startsWith(step.title())).toList();
            String all = String.join(" ", ofStep);
            assertThat(all).contains(step.told());
            assertThat(ofStep.stream().filter(text -> text.contains(" of " + step.count() + ". ")))
                    .hasSize(step.rows().size());
        }
        Ticks ticks = piece().ticks();
        assertThat(sheet.now(ticks)).isEmpty();
        for (LoomStep step : sheet.steps()) {
            assertThat(ticks.done(step.step().key())).isEqualTo(step.count());
        }
    }

    @Test
    void aWholePieceIsWovenWithKeysAlone() throws Exception {
        open(home.resolve("state"), Optional.of(wave()));
        toTheLoom();
        unseen();
        int[] keys = {KeyEvent.VK_SPACE, KeyEvent.VK_RIGHT, KeyEvent.VK_PAGE_DOWN};
        int[] pressed = new int[1];
        everyStepWasSeen(weave(() -> window.press(keys[pressed[0]++ % keys.length])));
        Ticks all = piece().ticks();
        window.press(KeyEvent.VK_PAGE_UP);
        assertThat(piece().ticks()).isNotEqualTo(all);
        assertThat(seen()).contains("Next: nothing, it is the last step");
        window.press(KeyEvent.VK_ESCAPE);
        waitFor("the loom to be left", () -> onEventThread(() -> !loom.target().isVisible()));
        onEventThread(() -> {
            editor.session().undo();
            return null;
        });
        assertThat(piece().ticks()).isEqualTo(all);
    }

    @Test
    void aWholePieceIsWovenWithTheMouseAlone() throws Exception {
        open(home.resolve("state"), Optional.of(wave()));
        toTheLoom();
        unseen();
        everyStepWasSeen(weave(() -> loom.button("loom-done").click()));
        loom.button("loom-back").click();
        assertThat(seen()).contains("Next: nothing, it is the last step");
    }

    /** Right after a tick one key takes it off again, wherever that leads back to. */
    @Test
    void aMistakenTickIsOneKeyBack() throws Exception {
        open(home.resolve("state"), Optional.of(wave()));
        toTheLoom();
        unseen();
        for (int i = 0; i < 12; i++) {
            Ticks before = piece().ticks();
            String seen = seen();
            window.press(KeyEvent.VK_SPACE);
            if (!piece().ticks().equals(before)) {
                window.press(i % 2 == 0 ? KeyEvent.VK_BACK_SPACE : KeyEvent.VK_LEFT);
                assertThat(piece().ticks()).isEqualTo(before);
                assertThat(seen()).isEqualTo(seen);
                window.press(KeyEvent.VK_SPACE);
            }
        }
        assertThat(piece().ticks().isEmpty()).isFalse();
    }

    @Test
    void killedInTheMiddleItGoesOnAtTheSameRow() throws Exception {
        Path state = home.resolve("state");
        open(state, Optional.of(wave()));
        toTheLoom();
        while (!seen().contains("pick 3 of")) {
            window.press(KeyEvent.VK_SPACE);
        }
        String seen = seen();
        Ticks ticks = piece().ticks();
        keeper.flush();
        Path left = home.resolve("left");
        Files.createDirectories(left);
        try (Stream<Path> files = Files.list(state)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".journal")).toList()) {
                Files.copy(file, left.resolve(file.getFileName()));
            }
        }
        onEventThread(() -> {
            editor.dispose();
            return null;
        });
        open(left, Optional.empty());
        answers.recovering = Recovering.UNSAVED;
        onEventThread(() -> {
            editor.recover();
            return null;
        });
        waitFor("the work to be there again", () -> piece().ticks().equals(ticks));
        toTheLoom();
        assertThat(seen()).isEqualTo(seen);
    }

    /** The height of a row of twining is typed at the loom; what it means is said at once, and heights above go by it. */
    @Test
    void whatIsMeasuredAtTheLoomIsReckonedWithAtOnce() throws Exception {
        open(home.resolve("state"), Optional.of(wave()));
        toTheLoom();
        while (piece().ticks().done("start/twining") == 0 || seen().contains("row 2 of 2")) {
            window.press(KeyEvent.VK_SPACE);
        }
        // a modal dialog holds whoever opens it
        SwingUtilities.invokeLater(() -> loomButton("loom-measure").doClick());
        DialogFixture measured = window.dialog("measured");
        double planned = onEventThread(() -> Plan.of(editor.session().piece())
                .start()
                .block("twining")
                .orElseThrow()
                .top());
        measured.textBox("field.measured.height").setText("1 mm");
        assertThat(piece().measures().isEmpty()).as("a height that can't be").isTrue();
        assertThat(measured.textBox("field.measured.height").text()).isEqualTo("1 mm");
        double onLoom = Plan.of(piece()).start().onLoom() + planned + 4;
        measured.textBox("field.measured.height").setText(String.format(Locale.ROOT, "%.3f mm", onLoom));
        assertThat(piece().measures().of("start/twining").height()).isPresent();
        String said = onEventThread(
                () -> Stage.all(measured.target(), JTextComponent.class, text -> !text.isEditable()).stream()
                        .map(JTextComponent::getText)
                        .collect(Collectors.joining("\n")));
        assertThat(said)
                .contains("it came out 4 mm higher", "4 mm over: the design begins 17.5 cm above the lower bar");
        measured.button("measured.close").click();
        assertThat(piece().ticks().isEmpty()).isFalse();
    }

    private AbstractButton loomButton(String name) {
        return loom.robot().finder().findByName(loom.target(), name, AbstractButton.class);
    }

    /** What is pressed is large enough for a finger: 12 mm on a screen of 96 dots to the inch. */
    @Test
    void targetsAreLargeEnough() throws Exception {
        open(home.resolve("state"), Optional.of(wave()));
        toTheLoom();
        for (String name : List.of("loom-done", "loom-back", "loom-measure", "loom-speak")) {
            AbstractButton button = loom.robot().finder().findByName(loom.target(), name, AbstractButton.class);
            assertThat(onEventThread(button::getWidth)).isGreaterThanOrEqualTo((int) (12 * 96 / 25.4));
            assertThat(onEventThread(button::getHeight)).isGreaterThanOrEqualTo((int) (12 * 96 / 25.4));
        }
    }
}

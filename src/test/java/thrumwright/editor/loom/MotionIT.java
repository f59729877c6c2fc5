package thrumwright.editor.loom;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;
import static thrumwright.testing.WindowTest.waitFor;

import java.awt.Dimension;
import java.lang.management.ManagementFactory;
import javax.swing.JFrame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.testing.WindowTest;

/** A move goes on while it is wanted; when it stands still, nothing works. */
class MotionIT {
    /** The event thread's own time in half a second, ns; a timer that runs takes as much in a few pictures. */
    private static final long NOTHING = 25_000_000;

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private LoomStage stage;

    @Test
    void standingStillItTakesNoProcessorTime() throws Exception {
        PieceFile wave = PieceFile.read(BuiltIn.DEMO.text("first-wave.json"));
        window.show(() -> {
            stage = new LoomStage(wave, new Dimension(1000, 640));
            JFrame frame = new JFrame();
            frame.add(stage.component());
            return frame;
        });
        onEventThread(() -> {
            stage.weaveTo("start/twining");
            return null;
        });
        assertThat(onEventThread(stage::busy)).isFalse();
        turn();
        assertThat(onEventThread(stage::busy)).isTrue();
        waitFor("some yarn to be laid in", () -> onEventThread(stage::laid) > 0.02);
        turn();
        double laid = onEventThread(stage::laid);
        assertThat(onEventThread(stage::busy)).isFalse();
        window.robot().waitForIdle();
        long before = onEventThread(MotionIT::worked);
        Thread.sleep(500);
        assertThat(onEventThread(MotionIT::worked) - before).isLessThan(NOTHING);
        assertThat(onEventThread(stage::laid)).isEqualTo(laid);
    }

    private void turn() {
        onEventThread(() -> {
            stage.turn();
            return null;
        });
    }

    private static long worked() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}

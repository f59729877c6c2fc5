package thrumwright.testing;

import java.awt.FlowLayout;
import java.awt.event.KeyEvent;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Tries the ground the window tests stand on, on a window of its own. */
class WindowTestIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    @Test
    void aClickReachesItsButton() {
        FrameFixture frame = window.show(WindowTestIT::counter);

        frame.button("count").click();
        frame.button("count").click();

        frame.label("counted").requireText("2");
    }

    @Test
    void typedLettersReachTheirField() {
        FrameFixture frame = window.show(WindowTestIT::counter);

        frame.textBox("note").enterText("Marsh grey, 5 picks");

        frame.textBox("note").requireText("Marsh grey, 5 picks");
    }

    @Test
    @RealScreenOnly
    void theAltKeyReachesAButton() {
        FrameFixture frame = window.show(WindowTestIT::counter);

        frame.robot().pressKey(KeyEvent.VK_ALT);
        frame.robot().pressAndReleaseKey(KeyEvent.VK_C);
        frame.robot().releaseKey(KeyEvent.VK_ALT);

        frame.label("counted").requireText("1");
    }

    private static JFrame counter() {
        AtomicInteger count = new AtomicInteger();
        JLabel counted = new JLabel("0");
        counted.setName("counted");
        JButton button = new JButton("Count");
        button.setName("count");
        button.setMnemonic('C');
        button.addActionListener(e -> counted.setText(String.valueOf(count.incrementAndGet())));
        JTextField note = new JTextField(20);
        note.setName("note");
        JFrame frame = new JFrame("Counter");
        frame.setLayout(new FlowLayout());
        frame.add(button);
        frame.add(counted);
        frame.add(note);
        frame.pack();
        return frame;
    }
}

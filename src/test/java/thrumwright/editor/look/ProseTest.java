package thrumwright.editor.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import thrumwright.testing.Laying;

/** Other words move what stands round them only where they need another room. */
class ProseTest {
    private static final String LONG = "of which the front is seen and the back lies on the wall ".repeat(3);

    private final Prose prose = new Prose("6 picks, 12 mm high");
    private final JPanel panel = new JPanel(new MigLayout("fillx", "[grow, fill]"));
    private final Laying laying = new Laying();

    @BeforeEach
    void layOut() throws Exception {
        laying.begin();
        EventQueue.invokeAndWait(() -> {
            panel.add(prose, "wmin 40");
            panel.setSize(200, 300);
            panel.doLayout();
        });
        // whose width is new asks once more by an event of its own
        EventQueue.invokeAndWait(panel::doLayout);
    }

    @AfterEach
    void leave() throws Exception {
        laying.end();
    }

    private int told(String text) throws Exception {
        EventQueue.invokeAndWait(() -> {
            laying.forget();
            prose.setText(text);
        });
        assertThat(prose.getText()).isEqualTo(text);
        return laying.asked();
    }

    @Test
    void wordsOfTheSameSizeMoveNothing() throws Exception {
        assertThat(told("8 picks, 16 mm high")).isZero();
    }

    @Test
    void wordsThatTakeMoreLinesDo() throws Exception {
        assertThat(told(LONG)).isPositive();
    }
}

package thrumwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TerminalTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(bytes);

    private String said() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aNameCantSteerTheTerminal() {
        String name = "red\u001b[2J\u0007\u009b31m\u0000 reed";
        terminal.println(name);
        terminal.print(name);
        terminal.printf(Locale.ROOT, "%s%n", name);
        terminal.append(name);
        assertThat(said().chars().filter(sign -> Character.isISOControl(sign) && sign != '\n'))
                .isEmpty();
        assertThat(said()).startsWith("red\uFFFD[2J\uFFFD\uFFFD31m\uFFFD reed\n");
    }

    @Test
    void linesTabsAndFractionsComeOut() {
        terminal.println("½ in\t× 2\n☐");
        assertThat(said()).isEqualTo("½ in\t× 2\n☐\n");
    }

    @Test
    void bytesGoThroughAsTheyAre() {
        byte[] file = {0x25, 0x50, 0x1b, 0x00, (byte) 0x9b};
        terminal.write(file, 0, file.length);
        terminal.flush();
        assertThat(bytes.toByteArray()).isEqualTo(file);
    }
}

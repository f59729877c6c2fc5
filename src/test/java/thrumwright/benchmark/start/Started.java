package thrumwright.benchmark.start;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.PaintEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.WindowConstants;
import thrumwright.app.Main;
import thrumwright.editor.canvas.PieceCanvas;

/**
 * A program that is timed from outside: it tells, a line each, what it came to since it was started, and ends. Its first
 * argument says which; the rest are the program's. Linux only, since it asks {@code /proc}.
 */
public final class Started {
    private static boolean painted;

    private Started() {}

    public static void main(String[] arguments) throws Exception {
        String[] rest = java.util.Arrays.copyOfRange(arguments, 1, arguments.length);
        switch (arguments[0]) {
            case "bare" -> {
                watch();
                EventQueue.invokeLater(Started::bare);
            }
            case "window" -> {
                watch();
                Main.main(rest);
            }
            case "line" -> System.out.println("1.0");
            default -> Main.main(rest);
        }
        if (!arguments[0].equals("bare") && !arguments[0].equals("window")) {
            System.exit(0);
        }
    }

    private static void bare() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("Bare");
        frame.setDefaultCloseOperation(WindowConstants.EXIT_ON_CLOSE);
        frame.add(new JLabel("Bare"));
        frame.setSize(1280, 800);
        frame.setVisible(true);
    }

    /** Once the first window has been painted, and then once nothing in it is a sketch any more. */
    private static void watch() {
        Toolkit.getDefaultToolkit()
                .addAWTEventListener(
                        event -> {
                            if (!painted
                                    && event instanceof PaintEvent paint
                                    && paint.getComponent() instanceof Frame) {
                                painted = true;
                                EventQueue.invokeLater(() -> {
                                    tell("painted");
                                    waitUntilSharp();
                                });
                            }
                        },
                        AWTEvent.PAINT_EVENT_MASK);
    }

    private static void waitUntilSharp() {
        boolean sharp = true;
        for (Window window : Window.getWindows()) {
            sharp &= sharp(window);
        }
        if (sharp) {
            tell("sharp");
            Runtime.getRuntime().halt(0);
        }
        EventQueue.invokeLater(() -> {
            java.util.concurrent.locks.LockSupport.parkNanos(2_000_000);
            EventQueue.invokeLater(Started::waitUntilSharp);
        });
    }

    private static boolean sharp(Component component) {
        boolean sharp = !(component instanceof PieceCanvas canvas) || !canvas.isShowing() || canvas.sharp();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                sharp &= sharp(child);
            }
        }
        return sharp;
    }

    /** A moment, ms since 1970; what the program used of the processor, ms; what it holds of memory, KB. */
    private static void tell(String what) {
        try {
            long now = System.currentTimeMillis();
            String[] stat = Files.readString(Path.of("/proc/self/stat"))
                    .replaceFirst("^.*\\) ", "")
                    .split(" ");
            // user and system time in hundredths of a second: the 14th and 15th field of all
            long processor = 10 * (Long.parseLong(stat[11]) + Long.parseLong(stat[12]));
            String held = Files.readAllLines(Path.of("/proc/self/status")).stream()
                    .filter(line -> line.startsWith("VmRSS"))
                    .findFirst()
                    .orElseThrow()
                    .replaceAll("\\D", "");
            System.err.println("told " + what + " " + now + " " + processor + " " + held);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package thrumwright.benchmark.start;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.Window;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import thrumwright.app.Main;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;

/**
 * A program that is timed from outside: it tells, a line each, what it came to since it was started, and ends. Its first
 * argument says which; the rest are the program's. Linux only, since it asks {@code /proc}.
 */
public final class Started {
    /** How much longer it stays, ms: so that all is noted that a start loads. */
    private static final int STAY = Integer.getInteger("stay", 0);

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
            case "sheet" -> sheet();
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

    /** What a first sheet takes once there is a plan, fonts and all. */
    private static void sheet() throws Exception {
        Plan plan = Plan.of(
                PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0))).piece());
        tell("planned");
        Fonts fonts = Fonts.load();
        SheetPages pages = SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
        PdfFile.write(pages, OutputStream.nullOutputStream());
        tell("sheet");
    }

    /**
     * Once the first window has been painted, then once all of its parts are there and then once nothing in it is a sketch any
     * more. The watch is set as soon as there is an event thread, and not before: it would begin Java's own toolkit earlier than
     * the program does.
     */
    private static void watch() {
        Thread thread = new Thread(() -> {
            while (!eventThread()) {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(2));
            }
            EventQueue.invokeLater(Started::watchPainting);
        });
        thread.setDaemon(true);
        thread.start();
    }

    private static boolean eventThread() {
        Thread[] threads = new Thread[64];
        int count = Thread.enumerate(threads);
        boolean there = false;
        for (int i = 0; i < count; i++) {
            there |= threads[i].getName().startsWith("AWT-EventQueue");
        }
        return there;
    }

    private static void watchPainting() {
        RepaintManager.setCurrentManager(new RepaintManager() {
            @Override
            public void paintDirtyRegions() {
                super.paintDirtyRegions();
                if (!painted && shown()) {
                    painted = true;
                    tell("painted");
                    EventQueue.invokeLater(Started::waitUntilWhole);
                }
            }
        });
    }

    private static boolean shown() {
        boolean shown = false;
        for (Window window : Window.getWindows()) {
            shown |= window instanceof Frame && window.isShowing();
        }
        return shown;
    }

    /** All parts of the window are there once its status line has told all that it has. */
    private static void waitUntilWhole() {
        boolean whole = true;
        for (Window window : Window.getWindows()) {
            whole &= !(window instanceof Frame) || !"editor".equals(window.getName()) || told(window);
        }
        if (whole) {
            EventQueue.invokeLater(() -> {
                tell("whole");
                waitUntilSharp();
            });
        } else {
            EventQueue.invokeLater(Started::waitUntilWhole);
        }
    }

    private static boolean told(Component component) {
        boolean told = "status".equals(component.getName()) && ((JLabel) component).getToolTipText() != null;
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                told |= told(child);
            }
        }
        return told;
    }

    private static void waitUntilSharp() {
        boolean sharp = true;
        for (Window window : Window.getWindows()) {
            sharp &= sharp(window);
        }
        if (sharp) {
            tell("sharp");
            new Timer(STAY, event -> Runtime.getRuntime().halt(0)).start();
            return;
        }
        EventQueue.invokeLater(() -> {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(2));
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

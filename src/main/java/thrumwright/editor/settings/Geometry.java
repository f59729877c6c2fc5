package thrumwright.editor.settings;

import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import thrumwright.editor.look.Pixels;

/** Remembers where a window was and how large. */
public final class Geometry {
    private static final int SHIFT = 28;

    private final Settings settings;
    private final String key;
    private final Dimension usual;

    /** Of a window that edits a piece. */
    public Geometry(Settings settings) {
        this(settings, "window", new Dimension(1320, 860));
    }

    /**
     * @param key under which it is remembered
     * @param usual size, where the screen is large enough and nothing is remembered
     */
    public Geometry(Settings settings, String key, Dimension usual) {
        this.settings = settings;
        this.key = key;
        this.usual = usual;
    }

    /** Whether anything is remembered. */
    public boolean known() {
        return settings.get(key).flatMap(Geometry::numbers).isPresent();
    }

    /** Of a window that fills the screen, also how it was before; that is how it is to be when it no longer does. */
    public void remember(JFrame frame) {
        boolean whole = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        Rectangle bounds = whole
                ? settings.get(key)
                        .flatMap(Geometry::numbers)
                        .map(Geometry::bounds)
                        .orElseGet(frame::getBounds)
                : frame.getBounds();
        settings.put(key, bounds.x + "," + bounds.y + "," + bounds.width + "," + bounds.height + "," + (whole ? 1 : 0));
    }

    private static Rectangle bounds(int[] kept) {
        return new Rectangle(kept[0], kept[1], kept[2], kept[3]);
    }

    /** @param already how many other windows there are, so that none covers another wholly */
    public void restore(JFrame frame, int already) {
        int[] kept = settings.get(key).flatMap(Geometry::numbers).orElse(null);
        Rectangle screen = screen(frame);
        Rectangle wanted = kept == null ? atFirst(screen, already) : bounds(kept);
        if (kept != null) {
            wanted.translate(already * SHIFT, already * SHIFT);
        }
        frame.setBounds(inside(wanted, screenOf(wanted).orElse(screen)));
        if (kept != null && kept[4] == 1) {
            frame.setExtendedState(Frame.MAXIMIZED_BOTH);
        }
    }

    /** As large as is usual, with some of the screen around it; all of a screen that has no room for that. */
    private Rectangle atFirst(Rectangle screen, int already) {
        Dimension size = Pixels.of(usual);
        boolean fits = size.width <= screen.width * 9 / 10 && size.height <= screen.height * 9 / 10;
        int left = (fits ? screen.width / 20 : 0) + already * SHIFT;
        int top = (fits ? screen.height / 20 : 0) + already * SHIFT;
        Dimension wanted = fits ? size : screen.getSize();
        return new Rectangle(screen.x + left, screen.y + top, wanted.width, wanted.height).intersection(screen);
    }

    /** The least size of a window, which is never more than its screen has room for. */
    public static void least(JFrame frame, int width, int height) {
        Rectangle screen = screen(frame);
        frame.setMinimumSize(
                new Dimension(Math.min(Pixels.of(width), screen.width), Math.min(Pixels.of(height), screen.height)));
    }

    /** @param size of a part of the window, pixels; nothing is kept of one that was never laid out */
    public void rememberPart(String name, int size) {
        if (size > 0) {
            settings.put("window." + name, String.valueOf(size));
        }
    }

    /** How large a part of the window was, pixels; 0 if nothing is known of it. */
    public int part(String name) {
        return settings.get("window." + name)
                .filter(text -> text.matches("\\d{1,5}"))
                .map(Integer::valueOf)
                .orElse(0);
    }

    public void rememberFlag(String name, boolean set) {
        settings.put("window." + name, String.valueOf(set));
    }

    /** Whether something about the window was remembered as so. */
    public boolean isSet(String name) {
        return settings.get("window." + name).filter("true"::equals).isPresent();
    }

    /** What a window may take of its screen. */
    private static Rectangle screen(JFrame frame) {
        GraphicsConfiguration configuration = frame.getGraphicsConfiguration();
        return configuration == null ? new Rectangle(0, 0, 1400, 900) : usable(configuration);
    }

    private static Rectangle usable(GraphicsConfiguration configuration) {
        Rectangle whole = configuration.getBounds();
        Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(configuration);
        return new Rectangle(
                whole.x + taken.left,
                whole.y + taken.top,
                whole.width - taken.left - taken.right,
                whole.height - taken.top - taken.bottom);
    }

    /** The screen on which there is enough of a window's title bar to take hold of it. */
    private static Optional<Rectangle> screenOf(Rectangle window) {
        Rectangle title = new Rectangle(window.x, window.y, window.width, 30);
        return Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                .map(device -> usable(device.getDefaultConfiguration()))
                .filter(screen -> {
                    Rectangle common = screen.intersection(title);
                    return common.width >= 100 && common.height >= 20;
                })
                .findFirst();
    }

    /** As little moved and made smaller as it must be to lie on a screen: the one that it was on may have been larger. */
    private static Rectangle inside(Rectangle wanted, Rectangle screen) {
        int width = Math.min(wanted.width, screen.width);
        int height = Math.min(wanted.height, screen.height);
        return new Rectangle(
                Math.max(screen.x, Math.min(wanted.x, screen.x + screen.width - width)),
                Math.max(screen.y, Math.min(wanted.y, screen.y + screen.height - height)),
                width,
                height);
    }

    private static Optional<int[]> numbers(String text) {
        if (!text.matches("-?\\d{1,5}(,-?\\d{1,5}){4}")) {
            return Optional.empty();
        }
        String[] parts = text.split(",");
        int[] numbers = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Integer.parseInt(parts[i]);
        }
        return Optional.of(numbers);
    }
}

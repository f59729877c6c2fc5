package thrumwright.editor.look;

import com.formdev.flatlaf.extras.FlatSVGIcon;
import com.formdev.flatlaf.extras.FlatSVGUtils;
import java.awt.EventQueue;
import java.awt.Image;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Icon;

/** The program's small pictures; drawn in one colour, which follows the theme. */
public final class Icons {
    private Icons() {}

    /** @param name of a file in the icons' folder, without its ending */
    public static Icon of(String name) {
        return new LineIcon(name, false);
    }

    /**
     * A picture in the colours in which it was drawn.
     *
     * @param size of its side, pixels at the usual size of type
     */
    public static Icon drawn(String name, int size) {
        return new FlatSVGIcon("thrumwright/editor/icons/" + name + ".svg", size, size);
    }

    /** The program's own icon in all the sizes that windows are given, so that each system takes the one that it needs. */
    public static List<Image> ofProgram() {
        return Program.SIZES;
    }

    /** Hands on the program's own icon, on the event thread, as soon as it has been drawn on another. */
    public static void ofProgramWhenDrawn(Consumer<List<Image>> taker) {
        Thread thread = new Thread(
                () -> {
                    List<Image> drawn = ofProgram();
                    EventQueue.invokeLater(() -> taker.accept(drawn));
                },
                "icon");
        thread.setDaemon(true);
        thread.start();
    }

    /** Drawn when the first window asks, once for all windows. */
    private static final class Program {
        static final List<Image> SIZES =
                FlatSVGUtils.createWindowIconImages("/thrumwright/editor/icons/thrumwright.svg");
    }
}

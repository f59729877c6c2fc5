package thrumwright.editor.window.piece;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import thrumwright.editor.look.Quiet;

/**
 * A line between two parts of the window, of which the second is given what is wanted of it and the first has the rest.
 * Where the window has less room for a time, the second has its size back afterwards.
 */
final class Divider {
    private final JSplitPane split;
    private final boolean down;
    private final Quiet placing = new Quiet();
    /** What there was to divide when it was last divided, pixels. */
    private int divided;

    /** @param way as of a split pane */
    Divider(String name, int way, JComponent first, JComponent second) {
        split = new JSplitPane(way, first, second);
        split.setName(name);
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        down = way == JSplitPane.VERTICAL_SPLIT;
    }

    /**
     * @param wanted size of the second part, pixels, told again whenever the window is another
     * @param dragged told of the size that somebody gave it by hand, pixels
     */
    void divide(IntSupplier wanted, IntConsumer dragged) {
        split.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                give(wanted.getAsInt());
            }
        });
        split.addPropertyChangeListener(JSplitPane.DIVIDER_LOCATION_PROPERTY, event -> {
            if (!placing.now() && whole() == divided && whole() > 0) {
                dragged.accept(second());
            }
        });
    }

    JSplitPane component() {
        return split;
    }

    /** Of both parts and the line between them, pixels. */
    int whole() {
        return down ? split.getHeight() : split.getWidth();
    }

    /** All that can be divided, pixels. */
    int room() {
        return whole() - split.getDividerSize();
    }

    /** Size of the second part, pixels, whether or not it was laid out since it was given it. */
    int second() {
        return room() - split.getDividerLocation();
    }

    /** Gives the second part a size, pixels. */
    void give(int size) {
        placing.during(() -> {
            divided = whole();
            split.setDividerLocation(Math.max(0, room() - size));
        });
    }
}

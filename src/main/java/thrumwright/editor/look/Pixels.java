package thrumwright.editor.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Insets;

/** Sizes of the window's own parts, which grow with its type wherever the look draws everything larger. */
public final class Pixels {
    private Pixels() {}

    /** @param usual pixels where nothing is drawn larger than usual */
    public static int of(int usual) {
        return UIScale.scale(usual);
    }

    /** As {@link #of(int)}, both ways. */
    public static Dimension of(Dimension usual) {
        return UIScale.scale(usual);
    }

    /** As {@link #of(int)}, on every side. */
    public static Insets of(Insets usual) {
        return UIScale.scale(usual);
    }

    /** As {@link #of(int)}, for what needn't come to whole pixels. */
    public static float of(float usual) {
        return UIScale.scale(usual);
    }
}

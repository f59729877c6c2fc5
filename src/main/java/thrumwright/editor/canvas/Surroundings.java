package thrumwright.editor.canvas;

import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.util.Optional;
import javax.swing.JComponent;
import thrumwright.editor.canvas.painted.RuleWidths;
import thrumwright.editor.canvas.seen.Framing;
import thrumwright.editor.canvas.seen.Room;
import thrumwright.editor.text.Texts;
import thrumwright.plan.Plan;

/** What stands beside the picture in its window, and how much room that leaves. */
final class Surroundings {
    /** In a narrower window the picture needs the room of the rules, pixels. */
    private static final int NARROW = 500;
    /** Rules that would take more of the window's width aren't shown. */
    private static final double MOST = 0.65;
    /** Between the picture and its rule, pixels. */
    private static final int AIR = 2;

    private final JComponent canvas;
    private final Scrolling scrolling;
    private final Texts texts;
    private RuleWidths widths;
    private boolean rules = true;

    Surroundings(JComponent canvas, Scrolling scrolling, Texts texts) {
        this.canvas = canvas;
        this.scrolling = scrolling;
        this.texts = texts;
    }

    boolean rules() {
        return rules;
    }

    void setRules(boolean shown) {
        rules = shown;
    }

    /** Of the rules; empty if none are shown. */
    Optional<RuleWidths> widths(Plan plan) {
        if (!rules || scrolling.window().width < NARROW) {
            return Optional.empty();
        }
        if (widths == null || !widths.isOf(plan)) {
            widths = RuleWidths.of(plan, texts, canvas::getFontMetrics);
        }
        boolean room = widths.notes() + widths.rule() <= MOST * scrolling.window().width;
        return room ? Optional.of(widths) : Optional.empty();
    }

    /** The room for the picture of a plan. */
    Room room(Plan plan) {
        Dimension window = scrolling.window();
        Optional<RuleWidths> beside = widths(plan);
        return new Room(
                window.width,
                window.height,
                canvas.getWidth(),
                canvas.getHeight(),
                beside.map(RuleWidths::notes).orElse(Framing.BESIDE),
                beside.map(ruled -> ruled.rule() + AIR).orElse(Framing.BESIDE),
                scrolling.isPossible(),
                density());
    }

    /** Device pixels per pixel of the canvas, more than 0. */
    double density() {
        GraphicsConfiguration screen = canvas.getGraphicsConfiguration();
        return screen == null ? 1 : screen.getDefaultTransform().getScaleX();
    }
}

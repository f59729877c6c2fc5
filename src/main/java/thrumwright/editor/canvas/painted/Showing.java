package thrumwright.editor.canvas.painted;

import java.awt.Color;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.text.Texts;
import thrumwright.plan.Plan;

/**
 * What the canvas shows at one moment.
 *
 * @param seen the part of the canvas that is in the window, pixels
 * @param focused whether the canvas has the keyboard
 * @param widths of what stands beside the picture; empty if nothing does
 */
public record Showing(
        CanvasMap map,
        Rectangle seen,
        Selection selection,
        boolean focused,
        Optional<RuleWidths> widths,
        Texts texts,
        Palette palette) {

    PiecePicture picture() {
        return map.picture();
    }

    Plan plan() {
        return picture().plan();
    }

    /** The part of the window that is kept for the picture: between the notes and the rule. */
    public Rectangle pictured() {
        Rectangle pictured = new Rectangle(seen);
        widths.ifPresent(beside -> {
            pictured.x += beside.notes();
            pictured.width = Math.max(0, seen.width - beside.notes() - beside.rule());
        });
        return pictured;
    }

    Color accent() {
        return UIManager.getColor("Thrumwright.selected");
    }
}

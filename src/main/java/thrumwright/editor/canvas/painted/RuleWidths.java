package thrumwright.editor.canvas.painted;

import java.awt.Font;
import java.awt.FontMetrics;
import java.util.function.Function;
import javax.swing.UIManager;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;

/**
 * How much room rules take beside the picture, pixels; measured once for each plan and font.
 *
 * @param notes of what stands at the left
 * @param rule of the rule with the names of its lines
 */
public record RuleWidths(Plan plan, Font font, int notes, int rule) {
    /** From the edge of a rule to its numbers, pixels. */
    static final int NUMBERS = 13;

    public static RuleWidths of(Plan plan, Texts texts, Function<Font, FontMetrics> measured) {
        Font font = labelFont();
        FontMetrics metrics = measured.apply(font);
        Piece piece = plan.piece();
        String highest = Division.widest(piece.shown(), plan.budget().open());
        return new RuleWidths(
                plan, font, SideNotes.width(plan, texts, metrics), NUMBERS + LineNames.width(metrics, texts, highest));
    }

    public boolean isOf(Plan other) {
        return plan == other && font.equals(labelFont());
    }

    private static Font labelFont() {
        Font label = UIManager.getFont("Label.font");
        return label.deriveFont(label.getSize2D() - 1.5f);
    }
}

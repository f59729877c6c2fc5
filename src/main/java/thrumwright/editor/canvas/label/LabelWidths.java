package thrumwright.editor.canvas.label;

import java.awt.Font;
import java.awt.FontMetrics;
import java.util.function.Function;

/** How much room each text of a label takes across, pixels. */
public record LabelWidths(int name, int amount, int height, int cut) {
    static final int COLUMNS = 4;
    public static final LabelWidths NONE = new LabelWidths(0, 0, 0, 0);

    static LabelWidths of(BlockWording wording, LabelFonts fonts, Function<Font, FontMetrics> measured) {
        FontMetrics plain = measured.apply(fonts.plain());
        return new LabelWidths(
                measured.apply(fonts.strong()).stringWidth(wording.name()),
                plain.stringWidth(wording.amount()),
                plain.stringWidth(wording.height()),
                plain.stringWidth(wording.cut()));
    }

    /** Room for either. */
    LabelWidths widest(LabelWidths other) {
        return new LabelWidths(
                Math.max(name, other.name),
                Math.max(amount, other.amount),
                Math.max(height, other.height),
                Math.max(cut, other.cut));
    }

    LabelWidths withName(int other) {
        return new LabelWidths(other, amount, height, cut);
    }

    /** @param column 0 for the name to 3 for the cut */
    int of(int column) {
        return switch (column) {
            case 0 -> name;
            case 1 -> amount;
            case 2 -> height;
            default -> cut;
        };
    }

    /** @param columns how many of them, from the first */
    int sum(int columns) {
        int sum = 0;
        for (int i = 0; i < columns; i++) {
            sum += of(i);
        }
        return sum;
    }
}

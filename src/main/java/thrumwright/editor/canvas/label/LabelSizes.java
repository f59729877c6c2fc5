package thrumwright.editor.canvas.label;

import thrumwright.editor.look.Pixels;

/**
 * The sizes of a list of labels, pixels.
 *
 * @param leader room for the lines to the blocks
 * @param gap between two columns
 * @param edge at the left
 * @param mostName longer names are shortened
 * @param leastName names are given no less
 */
public record LabelSizes(int leader, int gap, int edge, int mostName, int leastName) {
    public static LabelSizes now() {
        return new LabelSizes(Pixels.of(34), Pixels.of(12), Pixels.of(8), Pixels.of(170), Pixels.of(70));
    }
}

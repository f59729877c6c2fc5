package thrumwright.editor.loom;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.sheet.LoomStep;

/**
 * The words of a step on as many leaves as they need in type that can be read.
 *
 * @param wanted type that is large enough
 * @param type as large as it must be, or on a screen that is too small as large as it can
 * @param leaves sentences, leaf by leaf; at least one leaf
 */
record LoomLeaves(
        LoomStep step, LoomType wanted, LoomType type, boolean pictured, Dimension size, List<List<String>> leaves) {
    /** Smaller type couldn't be read even from close by. */
    private static final double LEAST = 0.25;

    /** @param size of the room, pixels */
    static LoomLeaves of(LoomStep step, LoomType wanted, boolean pictured, Dimension size) {
        LoomLeaves made = new LoomLeaves(step, wanted, wanted, pictured, size, List.of()).split();
        while (!made.fits() && made.type.share() > LEAST) {
            made = new LoomLeaves(step, wanted, made.type.smaller(), pictured, size, List.of()).split();
        }
        return made;
    }

    /** As many sentences on a leaf as fit. */
    private LoomLeaves split() {
        List<List<String>> all = new ArrayList<>();
        List<String> leaf = new ArrayList<>();
        for (String sentence : step.told()) {
            List<String> more = new ArrayList<>(leaf);
            more.add(sentence);
            if (!leaf.isEmpty() && !words(more).fits()) {
                all.add(leaf);
                more = new ArrayList<>(List.of(sentence));
            }
            leaf = more;
        }
        all.add(leaf);
        return new LoomLeaves(step, wanted, type, pictured, size, all);
    }

    private boolean fits() {
        return Stream.concat(
                        leaves.stream().map(this::words),
                        Stream.iterate(0, row -> row < step.rows().size(), row -> row + 1)
                                .map(row -> layout(Leaf.ofRow(step, row, "…"))))
                .allMatch(LoomLayout::fits);
    }

    private LoomLayout words(List<String> told) {
        return layout(Leaf.ofWords(step, told, "…"));
    }

    LoomLayout layout(Leaf leaf) {
        return new LoomLayout(leaf, type, pictured, size);
    }
}

package thrumwright.editor.loom;

import java.awt.Dimension;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
        for (String sentence : told()) {
            List<String> more = new ArrayList<>(leaf);
            more.add(sentence);
            LoomLayout words = words(more, all.isEmpty());
            if (!leaf.isEmpty() && !(words.fits() && words.pictured() == pictured)) {
                all.add(leaf);
                more = new ArrayList<>(List.of(sentence));
            }
            leaf = more;
        }
        all.add(leaf);
        return new LoomLeaves(step, wanted, type, pictured, size, all);
    }

    /** All that is to be read; what is too long for a leaf falls into its sentences. */
    private List<String> told() {
        return step.told().stream()
                .flatMap(text -> words(List.of(text), true).fits() ? Stream.of(text) : sentences(text).stream())
                .toList();
    }

    private static List<String> sentences(String text) {
        BreakIterator breaks = BreakIterator.getSentenceInstance();
        breaks.setText(text);
        List<String> sentences = new ArrayList<>();
        for (int from = 0, to = breaks.next(); to != BreakIterator.DONE; from = to, to = breaks.next()) {
            sentences.add(text.substring(from, to).strip());
        }
        return sentences;
    }

    private boolean fits() {
        return leaves.stream().map(leaf -> words(leaf, leaf == leaves.get(0))).allMatch(LoomLayout::fits)
                && rows().stream()
                        .map(row -> layout(Leaf.ofRow(step, row, "…")))
                        .allMatch(LoomLayout::fits);
    }

    /** A row of each sort; rows go on by turns, so there are few. */
    private Collection<Integer> rows() {
        Map<String, Integer> sorts = new HashMap<>();
        for (int row = 0; row < step.rows().size(); row++) {
            sorts.put(step.rows().get(row).said(), row);
        }
        return sorts.values();
    }

    private LoomLayout words(List<String> told, boolean first) {
        return layout(Leaf.ofWords(step, told, first, "…"));
    }

    /** A row has its picture; words that need all the room have none. */
    LoomLayout layout(Leaf leaf) {
        LoomLayout layout = new LoomLayout(leaf, type, pictured, size);
        return leaf.row().isEmpty() ? layout.fitted() : layout;
    }
}

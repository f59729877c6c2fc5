package thrumwright.editor.loom;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thrumwright.measure.Phrases;
import thrumwright.sheet.LoomStep;

/**
 * What is seen at one time.
 *
 * @param title the step
 * @param counted which of its rows; empty beside words
 * @param row how the row is worked; empty beside words
 * @param told sentences to be read before the first row
 * @param beside what to cut, and the height to reach
 * @param next what comes then, in small
 */
record Leaf(String title, String counted, String row, List<String> told, List<String> beside, String next) {
    Leaf {
        told = List.copyOf(told);
        beside = List.copyOf(beside);
    }

    /**
     * Words before a step's first row.
     *
     * @param first whether they are the first; what to cut stands beside those
     */
    static Leaf ofWords(LoomStep step, List<String> told, boolean first, String next) {
        return new Leaf(step.title(), "", "", told, first ? step.cuts() : List.of(), next);
    }

    static Leaf ofRow(LoomStep step, int row, String next) {
        LoomStep.LoomRow now = step.rows().get(row);
        List<String> beside = new ArrayList<>(step.cuts());
        Stream.of(step.reach()).filter(reach -> !reach.isEmpty()).forEach(beside::add);
        return new Leaf(step.title(), now.counted(), now.said(), List.of(), beside, next);
    }

    static Leaf finished(Phrases phrases) {
        return new Leaf(phrases.say("done.title"), "", "", List.of(phrases.say("done.text")), List.of(), "");
    }

    /** All its words, in the order in which they are read. */
    List<String> words() {
        return Stream.of(List.of(title, counted, row), told, beside, List.of(next))
                .flatMap(List::stream)
                .filter(text -> !text.isEmpty())
                .toList();
    }
}

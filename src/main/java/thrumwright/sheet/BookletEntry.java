package thrumwright.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How steps of one kind are worked.
 *
 * @param heads whose steps they are
 * @param pictures one of each sort of block
 * @param sewn what a picture of the whole piece shows instead
 * @param sentences what to do, in order; what differs from step to step says for which it is
 * @param cautions what can hurt
 */
public record BookletEntry(
        List<Head> heads,
        List<Step.Picture> pictures,
        Optional<Sewn> sewn,
        List<String> sentences,
        List<String> cautions) {
    /** Steps that have one title, and their numbers. */
    public record Head(String title, List<Integer> steps) {
        public String numbers() {
            return steps.stream().map(String::valueOf).collect(Collectors.joining(", "));
        }
    }

    public BookletEntry {
        heads = List.copyOf(heads);
        pictures = List.copyOf(pictures);
        sentences = List.copyOf(sentences);
        cautions = List.copyOf(cautions);
    }
}

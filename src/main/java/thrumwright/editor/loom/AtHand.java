package thrumwright.editor.loom;

import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.sheet.AtLoom;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;

/** What is to be seen of the work where it stands, in the room and the type that there are. */
final class AtHand {
    private final Weaving weaving;
    private final Phrases phrases;
    private LoomLeaves leaves;
    private Optional<StepPicture> picture = Optional.empty();

    AtHand(Weaving weaving, Phrases phrases) {
        this.weaving = weaving;
        this.phrases = phrases;
    }

    /** @param room pixels */
    LoomLayout layout(LoomType type, Dimension room) {
        Optional<AtLoom> now = weaving.now();
        if (now.isEmpty()) {
            picture = Optional.empty();
            return new LoomLayout(Leaf.finished(phrases), type, false, room);
        }
        LoomSheet sheet = weaving.sheet();
        LoomStep step = sheet.step(now.get());
        fit(sheet, step, type, room);
        String next = sheet.next(now.get(), phrases);
        int read = weaving.read(count());
        return leaves.layout(
                read == count()
                        ? Leaf.ofRow(step, now.get().row(), next)
                        : Leaf.ofWords(step, leaves.leaves().get(read), read == 0, first(step, next)));
    }

    /** After the words comes the first row. */
    private static String first(LoomStep step, String next) {
        return step.rows().isEmpty() ? next : "";
    }

    private void fit(LoomSheet sheet, LoomStep step, LoomType type, Dimension room) {
        boolean fitted = leaves != null
                && leaves.step().equals(step)
                && leaves.size().equals(room)
                && leaves.wanted().equals(type);
        if (!fitted) {
            picture = StepPicture.of(sheet.plan(), step.step());
            leaves = LoomLeaves.of(step, type, picture.isPresent(), room);
        }
    }

    /** How many leaves the words of the step take, 1 or more, as it was laid out last. */
    int count() {
        return leaves == null ? 1 : leaves.leaves().size();
    }

    Optional<StepPicture> picture() {
        return picture;
    }

    /** Which row the picture shows, from 0. */
    int row() {
        return weaving.now().map(AtLoom::row).orElse(0);
    }

    /** Where the yarn of the row passes from front to back. */
    List<Double> crossings() {
        return picture.map(shown -> shown.crossings(row())).orElse(List.of(1.0));
    }

    /** Whether there is anything that can move. */
    boolean moves() {
        return picture.flatMap(StepPicture::move).isPresent();
    }
}

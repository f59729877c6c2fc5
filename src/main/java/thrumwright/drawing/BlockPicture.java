package thrumwright.drawing;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Course;
import thrumwright.block.HalfHitch;
import thrumwright.block.MaterialRole;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Setting;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.YarnBlock;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/**
 * What there is to draw of one block: its yarn in stretches in front of the warp and behind it, made from the very
 * strands that give its length. They are worked out when they are first wanted, and kept.
 */
final class BlockPicture {
    private final YarnBlock block;
    private final Setting setting;
    private final List<Row> rows;
    private final Yarn yarn;
    private final boolean pale;
    private volatile Sides sides;

    /** The stretches of both faces, those on top last. */
    private record Sides(List<Stretch> front, List<Stretch> back) {}

    private BlockPicture(YarnBlock block, Setting setting, List<Row> rows, Yarn yarn, boolean pale) {
        this.block = block;
        this.setting = setting;
        this.rows = rows;
        this.yarn = yarn;
        this.pale = pale;
    }

    static BlockPicture of(Work work) {
        return of(work, work.block().use().comesOut());
    }

    /** @param pale whether to draw it paler, whatever becomes of it */
    static BlockPicture of(Work work, boolean pale) {
        return new BlockPicture(work.block(), work.setting(), work.rows(), work.yarn(), pale);
    }

    /** So many plain picks of a yarn that belongs to no block: the design's. */
    static BlockPicture picks(Yarn yarn, Setting setting, int count, Course before) {
        PlainBand band = new PlainBand(
                Tag.of("design"),
                Use.of(MaterialRole.WEFT),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(count),
                Optional.empty());
        return new BlockPicture(band, setting, band.rows(setting, before), yarn, false);
    }

    /** Whether this is the picture of that work. */
    boolean shows(Work work) {
        return block.equals(work.block())
                && setting.equals(work.setting())
                && rows.equals(work.rows())
                && yarn.equals(work.yarn());
    }

    /** In mm. */
    double height() {
        return block.height(setting);
    }

    Yarn yarn() {
        return yarn;
    }

    List<Stretch> front() {
        return sides().front();
    }

    List<Stretch> back() {
        return sides().back();
    }

    private Sides sides() {
        Sides known = sides;
        if (known == null) {
            List<Stretch> all = Stretches.of(setting, block.strands(setting, rows));
            known = new Sides(
                    all.stream().filter(Stretch::front).toList(),
                    all.stream().filter(stretch -> !stretch.front()).toList());
            sides = known;
        }
        return known;
    }

    /** Whether stretches lie on each other, so that their order matters. */
    boolean overlapping() {
        return block instanceof Soumak || block instanceof Twining || block instanceof HalfHitch;
    }

    /** Whether it is drawn paler. */
    boolean pale() {
        return pale;
    }
}

package thrumwright.drawing.yarn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Setting;
import thrumwright.block.Strand;

/**
 * The way of a block's yarns, as they are laid in one stretch after the other: the very stretches of every drawing, in the
 * order of the work.
 *
 * @param strands one for each yarn
 */
public record YarnPath(List<List<Reached>> strands) {
    /**
     * A stretch and how far its yarn is laid in with it.
     *
     * @param from share of the yarn's length where it begins, 0 to 1
     * @param to share where it ends
     */
    public record Reached(Stretch stretch, double from, double to) {
        /** As much of it as is laid in when so much of its yarn is. */
        Optional<Stretch> laid(double share) {
            if (share >= to) {
                return Optional.of(stretch);
            }
            double part = (share - from) / (to - from);
            return part > LEAST ? Optional.of(stretch.first(part)) : Optional.empty();
        }
    }

    /** Where a yarn is being laid in: a place of the block, and the unit way on from there; mm. */
    public record Tip(double x, double y, double dx, double dy) {}

    /** Less of a stretch isn't drawn: its way would be no way. */
    private static final double LEAST = 0.02;

    static YarnPath of(Setting setting, List<Strand> strands, boolean tailed, Detail detail) {
        return new YarnPath(strands.stream()
                .map(strand -> reached(Stretches.asLaid(setting, strand, tailed, detail)))
                .toList());
    }

    private static List<Reached> reached(List<Stretch> stretches) {
        double whole = stretches.stream().mapToDouble(Stretch::length).sum();
        List<Reached> all = new ArrayList<>();
        double gone = 0;
        for (Stretch stretch : stretches) {
            double to = gone + stretch.length();
            all.add(new Reached(stretch, gone / whole, to / whole));
            gone = to;
        }
        return all;
    }

    /**
     * The stretches that are laid in, those that lie on top last.
     *
     * @param share of the length of each yarn, 0 to 1
     */
    List<Stretch> laid(double share) {
        return strands.stream()
                .flatMap(List::stream)
                .flatMap(reached -> share >= 1 ? Optional.of(reached.stretch()).stream() : reached.laid(share).stream())
                .sorted(Comparator.comparingDouble(Stretch::order))
                .toList();
    }

    /**
     * Where each yarn is, when so much of it is laid in.
     *
     * @param share 0 to 1
     */
    public List<Tip> tips(double share) {
        return strands.stream().flatMap(strand -> tip(strand, share).stream()).toList();
    }

    private static Optional<Tip> tip(List<Reached> strand, double share) {
        return strand.stream()
                .filter(reached -> reached.from() < share)
                .reduce((one, later) -> later)
                .flatMap(reached -> reached.laid(share))
                .flatMap(YarnPath::end);
    }

    private static Optional<Tip> end(Stretch stretch) {
        int last = stretch.x().length - 1;
        for (int i = last - 1; i >= 0; i--) {
            double dx = stretch.x()[last] - stretch.x()[i];
            double dy = stretch.y()[last] - stretch.y()[i];
            double away = Math.hypot(dx, dy);
            if (away > 1e-3) {
                return Optional.of(new Tip(stretch.x()[last], stretch.y()[last], dx / away, dy / away));
            }
        }
        return Optional.empty();
    }
}

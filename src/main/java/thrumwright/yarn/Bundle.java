package thrumwright.yarn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import thrumwright.measure.Refused;

/**
 * Several strands laid side by side and wound as one weft, of one or more yarns. Its thickness, weight, colour and firmness
 * follow from the strands; it is hardly twisted, so that each strand is as long as the bundle (model).
 *
 * @param parts at least one; each yarn once
 */
public record Bundle(List<Strands> parts) implements Thickness {
    private static final double HARD_FROM = 0.875;
    private static final double MEDIUM_FROM = 0.625;

    /** @throws Refused if there is no part, or a yarn twice */
    public Bundle {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new Refused("wound.nothing", Map.of());
        }
        for (Strands part : parts) {
            if (parts.stream().filter(other -> sameYarn(other, part)).count() > 1) {
                throw new Refused("wound.twice", Map.of("yarn", part.yarn().name()));
            }
        }
    }

    private static boolean sameYarn(Strands one, Strands other) {
        return one.yarn().id().equals(other.yarn().id());
    }

    /** Number of strands in all, 1 or more. */
    public int strands() {
        return parts.stream().mapToInt(Strands::count).sum();
    }

    /** Number of strands of a yarn, 0 or more. */
    public int of(String yarnId) {
        return parts.stream()
                .filter(part -> part.yarn().id().equals(yarnId))
                .mapToInt(Strands::count)
                .sum();
    }

    /**
     * Relaxed diameter, mm, above 0: that of equal strands times the packing ratio, R(n)·d. For unequal ones d is the root of
     * the mean square, so that the strands fill the bundle as densely as equal ones (model).
     */
    @Override
    public double diameter(Fibre fibre, Firmness firmness) {
        return Packing.ratio(strands()) * Math.sqrt(sum(yarn -> yarn.diameter() * yarn.diameter()) / strands());
    }

    /** g/km, above 0: the sum of the strands. */
    @Override
    public double tex(Fibre fibre, Firmness firmness) {
        return sum(Yarn::tex);
    }

    /** Beaten thickness over relaxed diameter, a share above 0: that of its strands, by their sections. */
    public double share() {
        return sum(yarn -> yarn.beaten() * yarn.diameter()) / sum(yarn -> yarn.diameter() * yarn.diameter());
    }

    private double sum(ToDoubleFunction<Yarn> each) {
        return parts.stream()
                .mapToDouble(part -> part.count() * each.applyAsDouble(part.yarn()))
                .sum();
    }

    /** As the eye blends it from afar: the mean of its strands' light, by how wide they lie. */
    Colour colour() {
        return Colour.blended(parts.stream()
                .collect(Collectors.toMap(
                        part -> part.yarn().colour(),
                        part -> part.count() * part.yarn().diameter(),
                        Double::sum)));
    }

    /** Of which most of its weight is. */
    Fibre fibre() {
        return parts.stream()
                .max(Comparator.comparingDouble(
                        part -> part.count() * part.yarn().tex()))
                .orElseThrow()
                .yarn()
                .fibre();
    }

    /** That which comes nearest to its share. */
    Firmness firmness() {
        return share() >= HARD_FROM ? Firmness.HARD : share() >= MEDIUM_FROM ? Firmness.MEDIUM : Firmness.SOFT;
    }

    /** The colour of each strand, those of one yarn as far from each other as may be. */
    public List<Colour> colours() {
        List<Colour> all = new ArrayList<>();
        int[] laid = new int[parts.size()];
        for (int i = 1; i <= strands(); i++) {
            int next = 0;
            for (int j = 1; j < laid.length; j++) {
                next = due(i, j, laid) > due(i, next, laid) + 1e-9 ? j : next;
            }
            laid[next]++;
            all.add(parts.get(next).yarn().colour());
        }
        return all;
    }

    /** How much of a part is still to be laid by the strand of that number. */
    private double due(int number, int part, int[] laid) {
        return (double) number * parts.get(part).count() / strands() - laid[part];
    }

    @Override
    public String text() {
        return parts.stream()
                .map(part -> part.count() + " × " + part.yarn().name())
                .collect(Collectors.joining(" + "));
    }
}

package thrumwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thrumwright.piece.Design;
import thrumwright.piece.Piece;
import thrumwright.piece.Stripes;
import thrumwright.yarn.Yarn;

/**
 * What the design takes: each yarn by the share of the area that it covers, woven across the whole width with the plan's
 * take-up and ease, without tails. Told by nobody, half of it is the first and half the last stripe's (model).
 *
 * @param parts the first stripe's yarn, the others, the last one's; each yarn once
 * @param told whether the weaver said anything of it
 */
public record DesignWeft(List<Covered> parts, boolean told) {
    public DesignWeft {
        parts = List.copyOf(parts);
    }

    /**
     * One yarn of it.
     *
     * @param share of the design's area, 0 to 1
     * @param length mm, 0 or more
     */
    public record Covered(Yarn yarn, double share, double length) {}

    public static DesignWeft of(Piece piece) {
        List<Covered> parts = new ArrayList<>();
        shares(piece.design()).forEach((id, share) -> parts.add(part(piece, piece.yarn(id), share)));
        return new DesignWeft(parts, piece.design().stripes().told());
    }

    /** In mm, 0 or more. */
    public double length(Yarn yarn) {
        return parts.stream()
                .filter(part -> part.yarn().id().equals(yarn.id()))
                .mapToDouble(Covered::length)
                .sum();
    }

    /** Of all of it, in grams, 0 or more. */
    public double grams() {
        return parts.stream()
                .mapToDouble(part -> part.yarn().grams(part.length()))
                .sum();
    }

    /** By the ids of the yarns; where more than all of it is told, all in proportion. */
    private static Map<String, Double> shares(Design design) {
        Stripes stripes = design.stripes();
        double height = design.height().mm();
        double told = stripes.share(height);
        double less = Math.max(1, told);
        double rest = Math.max(0, 1 - told);
        double first = stripes.first().map(part -> part.of(height) / less).orElse(rest / 2);
        double last = stripes.first().isPresent() ? rest : rest / 2;
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put(design.firstYarnId(), first);
        stripes.others().forEach(each -> shares.merge(each.yarnId(), each.part().of(height) / less, Double::sum));
        shares.merge(design.lastYarnId(), last, Double::sum);
        shares.values().removeIf(share -> share <= 0);
        return shares;
    }

    /** n picks of t each fill a height: every pick ℓ a space, with its turn, and the ease. */
    private static Covered part(Piece piece, Yarn yarn, double share) {
        double picks = share * piece.design().heightOnLoom() / yarn.beaten();
        double each = piece.setting(yarn).plain(1) + piece.setting(yarn).turn(yarn.beaten());
        return new Covered(yarn, share, picks * each * (1 + piece.ease(yarn)));
    }
}

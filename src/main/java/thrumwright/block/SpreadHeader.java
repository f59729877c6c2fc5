package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.yarn.Packing;

/**
 * A few picks of a thick yarn, or of several strands together, laid in and not beaten, that even out a warp whose ends stand
 * unevenly: two ends between which such a pick crosses can't stand closer than its thickness allows. It comes out again.
 *
 * @param use a header always comes out
 * @param picks how often it crosses, 1 or more
 * @param strands how many yarns lie together in a pick, 1 to {@link #MOST_STRANDS}
 * @param firstShed the shed of its first pick; empty: the next in turn
 */
public record SpreadHeader(Tag tag, Use use, int picks, int strands, Optional<Shed> firstShed) implements PlainWeave {
    /** The most strands of a pick. */
    public static final int MOST_STRANDS = 12;

    public SpreadHeader {
        Objects.requireNonNull(tag);
        use = use.withComesOut(true);
        Objects.requireNonNull(firstShed);
        Amount.checkRows(picks, "picks");
        if (strands < 1 || strands > MOST_STRANDS) {
            throw new BadMeasure("header.strands", Map.of("most", MOST_STRANDS, "strands", strands));
        }
    }

    /** All strands as one yarn that isn't beaten: as thick as they lie together, d·R(n), relaxed and in the shed. */
    @Override
    public Setting worked(Setting yarn) {
        double thick = yarn.relaxed() * Packing.ratio(strands);
        return new Setting(yarn.ends(), yarn.spacing(), yarn.warp(), thick, thick, yarn.posts());
    }

    @Override
    public int together() {
        return strands;
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("strands", strands);
    }

    @Override
    public List<String> told(Setting setting) {
        List<String> told = new ArrayList<>();
        if (strands > 1) {
            told.add("spread-header.strands");
        }
        told.add("plain.begin");
        told.add(weaving(setting));
        told.addAll(List.of("spread-header.weave", "spread-header.even", "spread-header.instead", "plain.end"));
        return told;
    }

    @Override
    public List<String> stages(int made) {
        return List.of("spread-header.stage.lay", "spread-header.stage.even");
    }

    @Override
    public String key() {
        return "spread-header";
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Picks(picks));
    }

    @Override
    public boolean startOnly() {
        return true;
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.spreadHeader(this);
    }

    @Override
    public SpreadHeader mirrored() {
        return this;
    }

    @Override
    public SpreadHeader withTag(Tag other) {
        return new SpreadHeader(other, use, picks, strands, firstShed);
    }

    @Override
    public SpreadHeader withUse(Use other) {
        return new SpreadHeader(tag, other, picks, strands, firstShed);
    }

    @Override
    public SpreadHeader withRows(int other) {
        return withPicks(other);
    }

    public SpreadHeader withPicks(int other) {
        return new SpreadHeader(tag, use, other, strands, firstShed);
    }

    @Override
    public SpreadHeader withFirstShed(Optional<Shed> other) {
        return new SpreadHeader(tag, use, picks, strands, other);
    }

    public SpreadHeader withStrands(int other) {
        return new SpreadHeader(tag, use, picks, other, firstShed);
    }
}

package thrumwright.block;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Sense;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.yarn.Packing;

/**
 * Groups of warp ends gathered to tassels, each wrapped with a yarn of its own close below the edge.
 *
 * @param use only its material counts: a wrapping neither comes out nor begins at a side
 * @param endsPerGroup warp ends in a tassel, 2 to 24
 * @param turns of the wrapping, 1 to {@link #MOST_TURNS}
 * @param hanging how long the tassel hangs, with its wrapping
 */
public record WrappedTassels(Tag tag, Use use, int endsPerGroup, int turns, Length hanging)
        implements EdgeFinish, TakesYarn {
    /** The most turns. */
    public static final int MOST_TURNS = 500;

    public WrappedTassels {
        Objects.requireNonNull(tag);
        use = new Use(use.material(), false, Optional.empty());
        Twining.checkGroup(endsPerGroup);
        if (endsPerGroup < 2) {
            throw new BadMeasure("tassels.group", Map.of());
        }
        if (turns < 1 || turns > MOST_TURNS) {
            throw new BadMeasure("tassels.turns", Map.of("most", MOST_TURNS, "turns", turns));
        }
        EdgeFinish.checkLength(hanging);
    }

    /** How high the wrapping is, mm, more than 0: the turns lie side by side. */
    public double wrapped(Setting yarn) {
        return turns * yarn.beaten();
    }

    /** Diameter of the largest group's bundle, mm, more than 0. */
    public double widest(Setting yarn) {
        return yarn.warp() * Packing.ratio(largestGroup(yarn.ends()));
    }

    /**
     * Yarn in the wrapping of the largest group, mm, more than 0: n√((π(d_g + t))² + t²), a helix on its bundle.
     *
     * @param yarn the wrapping yarn on the warp
     */
    public double lengthOfOne(Setting yarn) {
        return turns * Math.hypot(Math.PI * (widest(yarn) + yarn.beaten()), yarn.beaten());
    }

    /** The wrapping's way round a bundle that stands at 0, from the wrapping's lower line up. */
    public Strand strand(Setting yarn) {
        double radius = (widest(yarn) + yarn.beaten()) / 2;
        Visit round = new Visit(0, 0, radius, Sense.CLOCKWISE, turns);
        Route route = Route.of(List.of(round), Route.FRONT, Route.FRONT);
        return new Strand(List.of(Leg.climbing(route, 0, wrapped(yarn))));
    }

    @Override
    public boolean hangs() {
        return true;
    }

    /** The outermost end of a group of G runs aside at most (G−1)s/2 to be gathered, and hangs. */
    @Override
    public double freeWarp(Setting warp) {
        return Math.max(HANDS, (largestGroup(warp.ends()) - 1) * warp.spacing() / 2 + hanging.mm());
    }

    @Override
    public Optional<Length> length() {
        return Optional.of(hanging);
    }

    @Override
    public WrappedTassels withLength(Length other) {
        return new WrappedTassels(tag, use, endsPerGroup, turns, other);
    }

    @Override
    public List<String> stages(int made) {
        return List.of(
                "wrapped-tassels.stage.loop",
                "wrapped-tassels.stage.wrap",
                "wrapped-tassels.stage.through",
                "wrapped-tassels.stage.draw");
    }

    @Override
    public String key() {
        return "wrapped-tassels";
    }

    @Override
    public List<String> ownPlaces() {
        return EdgeFinish.places("yarn", "turns", "wrapped", "pieces", "cut");
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.wrappedTassels(this);
    }

    @Override
    public WrappedTassels mirrored() {
        return this;
    }

    @Override
    public WrappedTassels withTag(Tag other) {
        return new WrappedTassels(other, use, endsPerGroup, turns, hanging);
    }

    @Override
    public WrappedTassels withUse(Use other) {
        return new WrappedTassels(tag, other, endsPerGroup, turns, hanging);
    }

    public WrappedTassels withTurns(int other) {
        return new WrappedTassels(tag, use, endsPerGroup, other, hanging);
    }

    public WrappedTassels withEndsPerGroup(int other) {
        return new WrappedTassels(tag, use, other, turns, hanging);
    }
}

package thrumwright.block;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Length;

/**
 * Warp ends knotted, plied or plaited to a fringe, or darned in.
 *
 * @param endsPerGroup warp ends that are knotted, plied or plaited together; darned ends go one by one
 * @param hanging how long the finished fringe hangs; for darned-in ends how far each is darned back
 */
public record WarpFinish(Tag tag, Kind kind, int endsPerGroup, Length hanging) implements EdgeFinish {
    /**
     * The ways to finish warp ends: the factor is cut length over hanging length by the published hand rules; then into how many
     * parts a group is divided.
     */
    public enum Kind {
        KNOTTED(1, 1),
        PLIED(1.25, 2),
        PLAITED(1.5, 3),
        DARNED(1, 1);

        private final double takeUp;
        private final int parts;

        Kind(double takeUp, int parts) {
            this.takeUp = takeUp;
            this.parts = parts;
        }
    }

    public WarpFinish {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(kind);
        Twining.checkGroup(endsPerGroup);
        EdgeFinish.checkLength(hanging);
    }

    @Override
    public int leastPerGroup() {
        return kind.parts;
    }

    @Override
    public double freeWarp(Setting warp) {
        return freeWarp(warp.warp());
    }

    /**
     * Free warp that each end needs beyond the edge, mm: the hanging length with what plying or plaiting takes up, the
     * knot, and never less than the hands need.
     *
     * @param warpDiameter mm
     */
    public double freeWarp(double warpDiameter) {
        double knot = kind == Kind.DARNED ? 0 : KNOT * bundle(warpDiameter);
        return Math.max(HANDS, hanging.mm() * kind.takeUp + knot);
    }

    /** Knots stand against the edge, and what hangs is measured below them; at a cord or a plait it is measured from the edge. */
    @Override
    public double beyond(Setting warp) {
        double knot = kind == Kind.KNOTTED ? KnotRows.KNOT_HIGH * bundle(warp.warp()) : 0;
        return hangs() ? knot + hanging.mm() : 0;
    }

    @Override
    public boolean hangs() {
        return kind != Kind.DARNED;
    }

    @Override
    public Optional<Length> length() {
        return Optional.of(hanging);
    }

    @Override
    public WarpFinish withLength(Length other) {
        return new WarpFinish(tag, kind, endsPerGroup, other);
    }

    @Override
    public List<String> stages(int made) {
        return switch (kind) {
            case KNOTTED -> EdgeFinish.KNOT_STAGES;
            case PLIED ->
                List.of("finish-plied.stage.halves", "finish-plied.stage.twist", "finish-plied.stage.together");
            case PLAITED ->
                List.of("finish-plaited.stage.three", "finish-plaited.stage.cross", "finish-plaited.stage.plait");
            case DARNED ->
                List.of("finish-darned.stage.needle", "finish-darned.stage.along", "finish-darned.stage.trim");
        };
    }

    @Override
    public String key() {
        return "finish-" + kind.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public <R> R of(FinishCases<R> cases) {
        return cases.warpFinish(this);
    }

    @Override
    public WarpFinish mirrored() {
        return this;
    }

    @Override
    public WarpFinish withTag(Tag other) {
        return new WarpFinish(other, kind, endsPerGroup, hanging);
    }

    public WarpFinish withKind(Kind other) {
        return new WarpFinish(tag, other, endsPerGroup, hanging);
    }

    public WarpFinish withEndsPerGroup(int other) {
        return new WarpFinish(tag, kind, other, hanging);
    }
}

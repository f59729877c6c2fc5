package thrumwright.plan;

import java.util.Optional;

/** What the loom has to know of both ends before it is known where they lie on it. */
record BareEnds(Bare start, Bare top) {
    /**
     * One end.
     *
     * @param height on the loom, mm, 0 or more
     * @param edge where the finished piece ends, above its lowest line, mm
     * @param needed free warp that the finish needs beyond the edge, mm, 0 or more; empty without one
     * @param looped whether warp loops close it
     */
    record Bare(double height, double edge, Optional<Double> needed, boolean looped) {}

    /** Free warp that the start takes below its lowest line, mm; below 0 where what comes out leaves more. */
    double neededBelow() {
        return start.needed().orElse(0.0) - start.edge();
    }

    /** Free warp that the top takes above its highest line, mm; below 0 where what comes out leaves more. */
    double neededAbove() {
        return top.needed().orElse(0.0) - (top.height() - top.edge());
    }

    /** Whether warp loops close either end, round what is fixed to the loom: then nothing travels. */
    boolean looped() {
        return start.looped() || top.looped();
    }
}

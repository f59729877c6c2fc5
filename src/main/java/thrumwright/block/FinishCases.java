package thrumwright.block;

/**
 * An answer for each kind of {@link EdgeFinish}.
 *
 * @param <R> what the answer is
 */
public interface FinishCases<R> {
    R warpFinish(WarpFinish warpFinish);

    R knotRows(KnotRows knotRows);

    R turnedEnds(TurnedEnds turnedEnds);

    R wovenEdge(WovenEdge wovenEdge);

    R wrappedTassels(WrappedTassels wrappedTassels);

    R warpLoops(WarpLoops warpLoops);
}

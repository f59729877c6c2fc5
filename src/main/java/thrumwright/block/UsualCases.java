package thrumwright.block;

/**
 * One answer for most kinds; a subclass overrides those that differ. Only where the usual answer is honest for a kind that
 * nobody has thought of yet; elsewhere implement {@link Cases}.
 *
 * @param <R> what the answer is
 */
public abstract class UsualCases<R> implements Cases<R>, YarnBlock.UsualYarnCases<R> {
    @Override
    public R warpFinish(WarpFinish warpFinish) {
        return usual(warpFinish);
    }

    @Override
    public R knotRows(KnotRows knotRows) {
        return usual(knotRows);
    }

    @Override
    public R turnedEnds(TurnedEnds turnedEnds) {
        return usual(turnedEnds);
    }

    @Override
    public R wovenEdge(WovenEdge wovenEdge) {
        return usual(wovenEdge);
    }

    @Override
    public R wrappedTassels(WrappedTassels wrappedTassels) {
        return usual(wrappedTassels);
    }

    @Override
    public R warpLoops(WarpLoops warpLoops) {
        return usual(warpLoops);
    }

    @Override
    public R hemFold(HemFold hemFold) {
        return usual(hemFold);
    }

    @Override
    public R openWarp(OpenWarp openWarp) {
        return usual(openWarp);
    }
}

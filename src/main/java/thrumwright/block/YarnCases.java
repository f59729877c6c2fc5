package thrumwright.block;

/**
 * An answer for each kind of block that is worked with a yarn across the warp. A new kind doesn't compile until all have
 * answered.
 *
 * @param <R> what the answer is
 */
public interface YarnCases<R> {
    R orderingCord(OrderingCord orderingCord);

    R plainBand(PlainBand plainBand);

    R spreadHeader(SpreadHeader spreadHeader);

    R twining(Twining twining);

    R soumak(Soumak soumak);

    R halfHitch(HalfHitch halfHitch);

    R hemstitching(Hemstitching hemstitching);
}

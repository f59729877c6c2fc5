package thrumwright.block;

/**
 * An answer for each kind of block, asked by {@link Block#of(Cases)}. A new kind doesn't compile until all have answered.
 *
 * @param <R> what the answer is
 */
public interface Cases<R> extends YarnBlock.YarnCases<R>, FinishCases<R> {
    R hemFold(HemFold hemFold);

    R openWarp(OpenWarp openWarp);
}

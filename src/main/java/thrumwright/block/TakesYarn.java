package thrumwright.block;

/** A block that takes yarn besides the warp. */
public sealed interface TakesYarn extends Block permits YarnBlock, WrappedTassels {
    Use use();

    TakesYarn withUse(Use use);
}

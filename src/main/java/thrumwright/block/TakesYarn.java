package thrumwright.block;

import java.util.Optional;

/** A block that takes yarn besides the warp. */
public sealed interface TakesYarn extends Block permits YarnBlock, WrappedTassels {
    Use use();

    TakesYarn withUse(Use use);

    /** Worked with another yarn. */
    default TakesYarn withMaterial(Material other) {
        return withUse(use().with(other));
    }

    @Override
    default Optional<TakesYarn> takesYarn() {
        return Optional.of(this);
    }

    @Override
    default Optional<String> ownYarn() {
        return use().material() instanceof Material.Own own ? Optional.of(own.yarnId()) : Optional.empty();
    }

    @Override
    default boolean comesOut() {
        return use().comesOut();
    }
}

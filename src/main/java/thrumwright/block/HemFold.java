package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Length;

/**
 * The line along which the hem folds; it has no height. Beside a soumak row it runs along that row's middle, elsewhere
 * along the line where it stands.
 *
 * @param turning how it is turned to the back
 * @param support what the hem is to take so that the piece can hang; empty: nothing
 */
public record HemFold(Tag tag, Turning turning, Optional<Support> support) implements Block {
    public HemFold {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(turning);
        Objects.requireNonNull(support);
    }

    /** @param firstTurn for a hem turned twice: how far from the hem's outer edge the first turn lies; empty: turned once */
    public HemFold(Tag tag, Optional<Length> firstTurn, Optional<Support> support) {
        this(tag, firstTurn.<Turning>map(Turning.Twice::new).orElseGet(Turning.Once::new), support);
    }

    /** A hem turned once that takes nothing. */
    public static HemFold once(Tag tag) {
        return new HemFold(tag, new Turning.Once(), Optional.empty());
    }

    /** How far from the hem's outer edge a first turn lies. */
    public Optional<Length> firstTurn() {
        return turning instanceof Turning.Twice twice ? Optional.of(twice.first()) : Optional.empty();
    }

    /** The band that covers what is turned back. */
    public Optional<Turning.Faced> band() {
        return turning instanceof Turning.Faced faced ? Optional.of(faced) : Optional.empty();
    }

    /** Whether its corners are turned in at 45°. */
    public boolean mitred() {
        return turning instanceof Turning.Mitred;
    }

    public HemFold withTurning(Turning other) {
        return new HemFold(tag, other, support);
    }

    public HemFold withSupport(Optional<Support> other) {
        return new HemFold(tag, turning, other);
    }

    @Override
    public List<String> stages(int made) {
        List<String> stages = new ArrayList<>(List.of("hem-fold.stage.flat"));
        stages.add(band().isPresent() ? "hem-fold.stage.fold-ends" : "hem-fold.stage.fold");
        stages.add(band().isPresent() ? "hem-fold.stage.band" : "hem-fold.stage.stitch");
        support.filter(taken -> taken.kind() != Support.Kind.STRIP)
                .ifPresent(taken -> stages.add("hem-fold.stage.slide"));
        return stages;
    }

    @Override
    public String key() {
        return "hem-fold";
    }

    @Override
    public List<String> ownPlaces() {
        return List.of("depth", "layers");
    }

    @Override
    public <R> R of(Cases<R> cases) {
        return cases.hemFold(this);
    }

    @Override
    public HemFold mirrored() {
        return this;
    }

    @Override
    public HemFold withTag(Tag other) {
        return new HemFold(other, turning, support);
    }
}

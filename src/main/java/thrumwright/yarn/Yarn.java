package thrumwright.yarn;

import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.Length;

/**
 * A yarn or cord on the weaver's shelf.
 *
 * @param id the name by which the piece refers to it; unique in a piece
 * @param name what the weaver calls it
 * @param firmness how far the beater squeezes it
 * @param sample a woven sample, which overrules the firmness
 * @param stock how much there is of it, if that is known
 */
public record Yarn(
        String id,
        String name,
        Colour colour,
        Fibre fibre,
        Thickness thickness,
        Firmness firmness,
        Optional<Sample> sample,
        Optional<Length> stock) {
    public Yarn {
        Objects.requireNonNull(name);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(fibre);
        Objects.requireNonNull(thickness);
        Objects.requireNonNull(firmness);
        Objects.requireNonNull(sample);
        Objects.requireNonNull(stock);
        if (id.isBlank()) {
            throw new IllegalArgumentException("a yarn needs an id");
        }
    }

    /** Relaxed diameter d in mm. */
    public double diameter() {
        return thickness.diameter(fibre);
    }

    /** Beaten thickness t in mm: what one pick takes up in the packed cloth. */
    public double beaten() {
        return sample.map(Sample::beaten).orElseGet(() -> firmness.share() * diameter());
    }

    /** Mass per length in g/km. */
    public double tex() {
        return thickness.tex(fibre);
    }

    /** The number of plies to draw: those of the count, else two. */
    public int plies() {
        return thickness instanceof Thickness.Counted counted ? counted.plies() : 2;
    }

    public Yarn withColour(Colour other) {
        return new Yarn(id, name, other, fibre, thickness, firmness, sample, stock);
    }

    public Yarn withId(String other) {
        return new Yarn(other, name, colour, fibre, thickness, firmness, sample, stock);
    }

    public Yarn withFirmness(Firmness other) {
        return new Yarn(id, name, colour, fibre, thickness, other, sample, stock);
    }

    public Yarn withSample(Optional<Sample> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, other, stock);
    }

    public Yarn withStock(Optional<Length> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, sample, other);
    }
}

package thrumwright.yarn;

import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Refused;

/**
 * A yarn or cord on the weaver's shelf, or a {@link Bundle} of strands that is woven as one. Colour, fibre and firmness of a
 * bundle are those of its strands; how much there is of it, and how it is sold, is asked of their yarns.
 *
 * @param id the name by which the piece refers to it; unique in a piece
 * @param name what the weaver calls it
 * @param firmness how far the beater squeezes it
 * @param sample a woven sample, which overrules the firmness
 * @param stock how much there is of it, if that is known
 * @param usage how much of it some picks took in this piece, which overrules the usual ease
 * @param skein how it is sold, if that is known
 * @param alsoTold a second measure of its thickness, to check the first by; nothing else goes by it
 */
public record Yarn(
        String id,
        String name,
        Colour colour,
        Fibre fibre,
        Thickness thickness,
        Firmness firmness,
        Optional<Sample> sample,
        Optional<Length> stock,
        Optional<Usage> usage,
        Optional<Thickness> alsoTold,
        Optional<Skein> skein) {
    /** A pick may be so much thicker or thinner than the yarn before a sample isn't believed (common practice, no source). */
    private static final double MOST_OF_IT = 5;

    private static final double LEAST_OF_IT = 0.1;
    private static final double MOST_APART = 4.0 / 3;

    public Yarn {
        Objects.requireNonNull(name);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(fibre);
        Objects.requireNonNull(thickness);
        Objects.requireNonNull(firmness);
        Objects.requireNonNull(sample);
        Objects.requireNonNull(stock);
        Objects.requireNonNull(usage);
        Objects.requireNonNull(alsoTold);
        Objects.requireNonNull(skein);
        if (id.isBlank()) {
            throw new IllegalArgumentException("a yarn needs an id");
        }
        if (thickness instanceof Bundle bundle) {
            if (bundle.of(id) > 0) {
                throw new Refused("wound.itself", Map.of("yarn", name));
            }
            colour = bundle.colour();
            fibre = bundle.fibre();
            firmness = bundle.firmness();
            stock = Optional.empty();
            alsoTold = Optional.empty();
            skein = Optional.empty();
        }
    }

    /** Several strands as one weft. */
    public static Yarn wound(String id, String name, Bundle bundle) {
        return new Yarn(id, name, bundle.colour(), bundle.fibre(), bundle, bundle.firmness());
    }

    /** What it is wound from, if it is several strands. */
    public Optional<Bundle> bundle() {
        return thickness instanceof Bundle bundle ? Optional.of(bundle) : Optional.empty();
    }

    /** How many strands of a yarn one length of this one takes, 0 or more: 1 of itself, if it is no bundle. */
    public int strandsOf(String yarnId) {
        return bundle().map(bundle -> bundle.of(yarnId)).orElse(yarnId.equals(id) ? 1 : 0);
    }

    /** What it is made of: one fibre, or those of its strands. */
    public Set<Fibre> fibres() {
        Set<Fibre> fibres = EnumSet.of(fibre);
        bundle().ifPresent(bundle ->
                bundle.parts().forEach(part -> fibres.add(part.yarn().fibre())));
        return fibres;
    }

    /** The same bundle with the yarns as they are now; any other yarn as it is. */
    public Yarn woundFrom(UnaryOperator<Yarn> now) {
        if (!(thickness instanceof Bundle bundle)) {
            return this;
        }
        return withThickness(new Bundle(bundle.parts().stream()
                .map(part -> part.of(now.apply(part.yarn())))
                .toList()));
    }

    /** Of which nothing more is known. */
    public Yarn(String id, String name, Colour colour, Fibre fibre, Thickness thickness, Firmness firmness) {
        this(
                id,
                name,
                colour,
                fibre,
                thickness,
                firmness,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Relaxed diameter d, mm, above 0. */
    public double diameter() {
        return thickness.diameter(fibre, firmness);
    }

    /** Beaten thickness t, mm, above 0: what one pick takes up in the packed cloth. */
    public double beaten() {
        return sample.map(Sample::beaten).orElseGet(this::beatenByFirmness);
    }

    /** What the beaten thickness would be without a sample, mm, above 0. */
    public double beatenByFirmness() {
        return bundle().map(Bundle::share).orElse(firmness.share()) * diameter();
    }

    /** Mass per length, g/km, above 0. */
    public double tex() {
        return thickness.tex(fibre, firmness);
    }

    /** What a length of it weighs, in grams; mm, 0 or more. */
    public double grams(double mm) {
        return mm / 1e6 * tex();
    }

    /** The number of plies to draw: those of the count or the strands of a bundle, else two. */
    public int plies() {
        return thickness instanceof Thickness.Counted counted
                ? counted.plies()
                : bundle().map(Bundle::strands).orElse(2);
    }

    public Yarn withColour(Colour other) {
        return new Yarn(id, name, other, fibre, thickness, firmness, sample, stock, usage, alsoTold, skein);
    }

    public Yarn withId(String other) {
        return new Yarn(other, name, colour, fibre, thickness, firmness, sample, stock, usage, alsoTold, skein);
    }

    public Yarn withName(String other) {
        return new Yarn(id, other, colour, fibre, thickness, firmness, sample, stock, usage, alsoTold, skein);
    }

    public Yarn withFibre(Fibre other) {
        return new Yarn(id, name, colour, other, thickness, firmness, sample, stock, usage, alsoTold, skein);
    }

    public Yarn withThickness(Thickness other) {
        return new Yarn(id, name, colour, fibre, other, firmness, sample, stock, usage, alsoTold, skein);
    }

    public Yarn withFirmness(Firmness other) {
        return new Yarn(id, name, colour, fibre, thickness, other, sample, stock, usage, alsoTold, skein);
    }

    /**
     * The same yarn with what was measured on a sample.
     *
     * @throws BadMeasure if its picks would be more than five times as thick as the yarn, or thinner than a tenth of it
     */
    public Yarn withSample(Optional<Sample> other) {
        other.ifPresent(this::believe);
        return new Yarn(id, name, colour, fibre, thickness, firmness, other, stock, usage, alsoTold, skein);
    }

    private void believe(Sample measured) {
        double share = measured.beaten() / diameter();
        if (share > MOST_OF_IT || share < LEAST_OF_IT) {
            String key = share > MOST_OF_IT ? "sample.yarn-thin" : "sample.yarn-thick";
            throw new BadMeasure(key, Map.of("picks", measured.picks(), "height", measured.height()));
        }
    }

    public Yarn withStock(Optional<Length> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, sample, other, usage, alsoTold, skein);
    }

    public Yarn withUsage(Optional<Usage> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, sample, stock, other, alsoTold, skein);
    }

    public Yarn withAlsoTold(Optional<Thickness> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, sample, stock, usage, other, skein);
    }

    public Yarn withSkein(Optional<Skein> other) {
        return new Yarn(id, name, colour, fibre, thickness, firmness, sample, stock, usage, alsoTold, other);
    }

    /**
     * How many skeins hold a length, 0 or more; nothing where it isn't known how it is sold.
     *
     * @param mm 0 or more
     */
    public Optional<Integer> skeins(double mm) {
        return skein.map(one -> (int) Math.ceil(mm / one.length(tex()) - 1e-9));
    }

    /** Whether both measures, if there are two, give diameters that are no more than a third apart (common practice, no source). */
    public boolean measuresAgree() {
        return alsoTold.map(second -> second.diameter(fibre, firmness) / diameter())
                .map(ratio -> Math.max(ratio, 1 / ratio) <= MOST_APART)
                .orElse(true);
    }
}

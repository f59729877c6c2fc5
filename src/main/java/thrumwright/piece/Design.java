package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * The design between the two ends.
 *
 * @param height as planned off the loom
 * @param firstYarnId yarn of its first stripe, which the start's facing takes up
 * @param lastYarnId yarn of its last stripe
 * @param lastShed shed of its last pick; empty if not known yet
 * @param lastSide the side where its last pick ended; empty if not known yet
 * @param relaxing how much the cloth shortens off the loom, as a share of its height, 0 to 0.5
 * @param stripes how much of it is woven in which yarn, as far as that was told
 */
public record Design(
        Length height,
        String firstYarnId,
        String lastYarnId,
        Optional<Shed> lastShed,
        Optional<Side> lastSide,
        double relaxing,
        Stripes stripes) {
    /** What is told may be so much more than all of it before it is refused: figures are rounded. */
    private static final double SPARE = 1e-6;

    public Design {
        Objects.requireNonNull(firstYarnId);
        Objects.requireNonNull(lastYarnId);
        Objects.requireNonNull(lastShed);
        Objects.requireNonNull(lastSide);
        Objects.requireNonNull(stripes);
        if (!(height.mm() > 0 && height.mm() <= 20_000)) {
            throw new BadMeasure("design.height", Map.of("height", height));
        }
        if (!(relaxing >= 0 && relaxing <= 0.5)) {
            throw new BadMeasure("design.relaxing", Map.of());
        }
    }

    /**
     * Of whose yarns nothing is told but the outermost.
     *
     * @param relaxing share, 0 to 0.5
     */
    public Design(
            Length height,
            String firstYarnId,
            String lastYarnId,
            Optional<Shed> lastShed,
            Optional<Side> lastSide,
            double relaxing) {
        this(height, firstYarnId, lastYarnId, lastShed, lastSide, relaxing, Stripes.NONE);
    }

    /** Whether more is told of its yarns than there is of it. */
    public boolean overfull() {
        return stripes.share(height.mm()) > 1 + SPARE;
    }

    /**
     * Told otherwise which yarns it has.
     *
     * @throws BadMeasure if that is more than all of it
     */
    public Design withStripes(Stripes other) {
        double share = other.share(height.mm());
        if (share > 1 + SPARE) {
            throw new BadMeasure("design.stripes", Map.of("share", Math.round(100 * share), "height", height));
        }
        return new Design(height, firstYarnId, lastYarnId, lastShed, lastSide, relaxing, other);
    }

    /** Its height on the loom, mm, more than 0: as much more as it will relax. */
    public double heightOnLoom() {
        return height.mm() * (1 + relaxing);
    }

    public Design withHeight(Length other) {
        return new Design(other, firstYarnId, lastYarnId, lastShed, lastSide, relaxing, stripes);
    }

    public Design withFirstYarn(String other) {
        return new Design(height, other, lastYarnId, lastShed, lastSide, relaxing, stripes);
    }

    public Design withLastYarn(String other) {
        return new Design(height, firstYarnId, other, lastShed, lastSide, relaxing, stripes);
    }

    public Design withLastShed(Optional<Shed> other) {
        return new Design(height, firstYarnId, lastYarnId, other, lastSide, relaxing, stripes);
    }

    /**
     * With its last pick ending at another side, and meeting the outermost end where it begins as it was said to.
     *
     * @param other empty if not known; it is taken for the right then
     * @param ends number of warp ends, 1 or more
     */
    public Design endingAt(Optional<Side> other, int ends) {
        Side before = lastSide.orElse(Side.RIGHT).other();
        Side now = other.orElse(Side.RIGHT).other();
        Optional<Shed> shed = lastShed.map(one -> Shed.meeting(one.meets(before, ends), now, ends));
        return new Design(height, firstYarnId, lastYarnId, shed, other, relaxing, stripes);
    }

    /** @param other share, 0 to 0.5 */
    public Design withRelaxing(double other) {
        return new Design(height, firstYarnId, lastYarnId, lastShed, lastSide, other, stripes);
    }
}

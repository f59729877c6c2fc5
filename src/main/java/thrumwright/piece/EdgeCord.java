package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;

/**
 * A cord or braid that is sewn along edges to cover a join, a hem's turned edge or the ends of picks.
 *
 * @param along which edges it lies along
 * @param thick how thick it is to be
 * @param plaited whether it is plaited of three parts; else plied of two
 */
public record EdgeCord(Along along, Length thick, boolean plaited) {
    /** Where it lies. */
    public enum Along {
        /** The lower and the upper edge. */
        ENDS,
        /** Both sides. */
        SIDES,
        /** All four edges and round the corners, in one length. */
        ALL_ROUND
    }

    /** The thickest, mm. */
    private static final double THICKEST = 30;

    public EdgeCord {
        Objects.requireNonNull(along);
        if (!(thick.mm() > 0 && thick.mm() <= THICKEST)) {
            throw new BadMeasure("cord.thick", Map.of("thick", thick));
        }
    }

    public EdgeCord withAlong(Along other) {
        return new EdgeCord(other, thick, plaited);
    }

    public EdgeCord withThick(Length other) {
        return new EdgeCord(along, other, plaited);
    }

    public EdgeCord withPlaited(boolean other) {
        return new EdgeCord(along, thick, other);
    }
}

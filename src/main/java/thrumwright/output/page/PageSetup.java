package thrumwright.output.page;

import java.util.Map;
import java.util.Objects;
import thrumwright.measure.Refused;

/**
 * How pages are set up.
 *
 * @param landscape whether the paper lies on its side
 * @param margin free on all four sides, mm, 5 to 40
 * @param distance from the eye to the hanging sheet, m, 0.4 to 2; the type follows from it
 */
public record PageSetup(Paper paper, boolean landscape, double margin, double distance) {
    /** How far from the eye a sheet hangs by the loom unless said otherwise, m. */
    public static final double USUAL_DISTANCE = 1;
    /** The margin unless said otherwise, mm. */
    public static final double USUAL_MARGIN = 14;

    /** @throws IllegalArgumentException if the margin in mm or the distance in metres isn't within its limits */
    public PageSetup {
        Objects.requireNonNull(paper);
        if (!(margin >= 5 && margin <= 40)) {
            throw new Refused("page.margins", Map.of());
        }
        if (!(distance >= 0.4 && distance <= 2)) {
            throw new Refused("page.distance", Map.of());
        }
    }

    /** Upright, to be read from a metre away. */
    public static PageSetup usual(Paper paper) {
        return new PageSetup(paper, false, USUAL_MARGIN, USUAL_DISTANCE);
    }

    /** Of the page, in points, more than 0. */
    public double width() {
        return landscape ? paper.height() : paper.width();
    }

    /** Of the page, in points, more than 0. */
    public double height() {
        return landscape ? paper.width() : paper.height();
    }

    /** In points, from 14 to 114. */
    public double marginPoints() {
        return margin * Paper.POINTS;
    }
}

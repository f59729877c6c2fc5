package thrumwright.piece;

import java.util.Objects;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;

/**
 * The warp.
 *
 * @param width nominal width
 * @param sett how closely it stands
 * @param yarnId its yarn
 */
public record Warp(Length width, Sett sett, String yarnId) {
    /** The most warp ends of a piece. */
    public static final int MOST_ENDS = 10_000;

    public Warp {
        Objects.requireNonNull(yarnId);
        if (width.mm() > 10_000) {
            throw new BadMeasure("A warp is at most 10 m wide, not “" + width + "”.");
        }
        long ends = Math.round(width.mm() * sett.perMillimetre());
        if (ends < 2 || ends > MOST_ENDS) {
            throw new BadMeasure("A warp has 2 to " + MOST_ENDS + " ends; " + width + " at " + sett + " gives " + ends
                    + ". Check the width and the sett.");
        }
    }

    /** N = round(width × sett). */
    public int ends() {
        return (int) Math.round(width.mm() * sett.perMillimetre());
    }

    /** Nominal width W = N·s in mm. */
    public double nominalWidth() {
        return ends() * sett.spacing();
    }
}

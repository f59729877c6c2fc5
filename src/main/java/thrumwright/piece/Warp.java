package thrumwright.piece;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;

/**
 * The warp.
 *
 * @param width nominal width
 * @param sett how closely it stands
 * @param yarnId its yarn
 * @param woven how wide the cloth was measured while weaving, edge to edge; empty: not measured
 */
public record Warp(Length width, Sett sett, String yarnId, Optional<Length> woven) {
    /** The most warp ends of a piece. */
    public static final int MOST_ENDS = 10_000;

    /**
     * Share by which a weft-faced cloth usually comes out narrower than its warp: published rugs set 29 in wide lose an inch at
     * either side (6.9 %), from 27 in 2 in (7.4 %), from 21 in 1½ in (7.1 %). It is told and not reckoned with; a measured width is.
     */
    public static final double USUAL_DRAW_IN = 0.07;

    /** A measured width between these shares of the nominal one is believed. */
    private static final double LEAST_WOVEN = 0.5;

    private static final double MOST_WOVEN = 1.2;

    public Warp {
        Objects.requireNonNull(yarnId);
        Objects.requireNonNull(woven);
        if (width.mm() > 10_000) {
            throw new BadMeasure("warp.width", Map.of("width", width));
        }
        long ends = Math.round(width.mm() * sett.perMillimetre());
        if (ends < 2 || ends > MOST_ENDS) {
            throw new BadMeasure("warp.ends", Map.of("most", MOST_ENDS, "width", width, "sett", sett, "ends", ends));
        }
    }

    /** Its cloth not measured yet. */
    public Warp(Length width, Sett sett, String yarnId) {
        this(width, sett, yarnId, Optional.empty());
    }

    /** N = round(width × sett). */
    public int ends() {
        return (int) Math.round(width.mm() * sett.perMillimetre());
    }

    /** Nominal width W = N·s, mm, more than 0. */
    public double nominalWidth() {
        return ends() * sett.spacing();
    }

    /** Whether the measured width, if there is one, can be that of this warp. */
    public boolean wovenLikely() {
        return woven.isEmpty() || 1 - measuredDrawIn() >= LEAST_WOVEN && 1 - measuredDrawIn() <= MOST_WOVEN;
    }

    private double measuredDrawIn() {
        return 1 - woven.orElseThrow().mm() / nominalWidth();
    }

    /**
     * Draw-in δ: the share by which the cloth is narrower than the warp; below 0 where it spreads. 0 if it wasn't
     * measured, or can't be right.
     */
    public double drawIn() {
        return wovenKnown() ? measuredDrawIn() : 0;
    }

    /** From one end's middle to the next in the cloth, mm, more than 0: s·(1 − δ). */
    public double spacing() {
        return sett.spacing() * (1 - drawIn());
    }

    /** Width of the cloth, mm, more than 0: N·s·(1 − δ). */
    public double clothWidth() {
        return ends() * spacing();
    }

    /** How wide the cloth usually comes out, mm. */
    public double usualWidth() {
        return nominalWidth() * (1 - USUAL_DRAW_IN);
    }

    /** Whether a measured width is reckoned with. */
    public boolean wovenKnown() {
        return woven.isPresent() && wovenLikely();
    }

    /** Of another size; on that the cloth was not measured. */
    public Warp resized(Length otherWidth, Sett otherSett) {
        return new Warp(otherWidth, otherSett, yarnId);
    }

    public Warp withWidth(Length other) {
        return new Warp(other, sett, yarnId, woven);
    }

    public Warp withSett(Sett other) {
        return new Warp(width, other, yarnId, woven);
    }

    public Warp withYarn(String otherId) {
        return new Warp(width, sett, otherId, woven);
    }

    public Warp withWoven(Optional<Length> other) {
        return new Warp(width, sett, yarnId, other);
    }
}

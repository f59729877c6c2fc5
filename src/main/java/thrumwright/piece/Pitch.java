package thrumwright.piece;

import java.util.Map;
import java.util.stream.IntStream;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Decimals;
import thrumwright.measure.Sett;

/** Which setts a fixed pitch allows: all of it used, or every second, every third and so on, the same all across. */
public record Pitch(LoomKind.Pegged pegs) {
    /** No warp leaves more than eleven of twelve unused. */
    private static final int MOST_STEPS = 12;
    /** Share by which a sett may miss: what a width rounds away. */
    private static final double SLACK = 0.005;

    /**
     * How many steps of the pitch lie between one that is used and the next, 1 to 12.
     *
     * @throws BadMeasure if no step gives that sett; the message names the nearest two that can be
     */
    public int steps(Sett sett) {
        return IntStream.rangeClosed(1, MOST_STEPS)
                .filter(steps -> Math.abs(perMillimetre(steps) / sett.perMillimetre() - 1) <= SLACK)
                .findFirst()
                .orElseThrow(() -> refused(sett));
    }

    void check(Sett sett) {
        steps(sett);
    }

    private double perMillimetre(int steps) {
        return pegs.peg().ends() * pegs.pitch().perMillimetre() / steps;
    }

    private BadMeasure refused(Sett sett) {
        int wider = IntStream.rangeClosed(1, MOST_STEPS)
                .filter(steps -> perMillimetre(steps) < sett.perMillimetre())
                .findFirst()
                .orElse(MOST_STEPS);
        int closer = wider == 1
                ? 2
                : wider == MOST_STEPS && perMillimetre(wider) > sett.perMillimetre() ? MOST_STEPS - 1 : wider - 1;
        return new BadMeasure(
                "pitch.sett",
                Map.of(
                        "sett", sett,
                        "pitch", pegs.pitch(),
                        "closer", said(Math.min(closer, wider)),
                        "wider", said(Math.max(closer, wider))));
    }

    /** In the unit of the pitch. */
    private String said(int steps) {
        String pitch = pegs.pitch().text();
        String unit = pitch.substring(pitch.indexOf('/') + 1);
        double over = pegs.pitch().perMillimetre();
        double each = perMillimetre(steps) / over * number(pitch);
        return Decimals.plain(each, 3, java.util.Locale.ROOT) + "/" + unit;
    }

    private double number(String pitch) {
        String unit = pitch.substring(pitch.indexOf('/') + 1);
        return pegs.pitch().perMillimetre() / Sett.parse("1/" + unit).perMillimetre();
    }
}

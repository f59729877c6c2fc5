package thrumwright.plan.words;

import java.util.Map;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Datum;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/** Says heights from what they can be measured from: the loom, or the cloth itself once it travels. */
public record HeightWords(Plan plan, Phrases phrases) {
    /**
     * “8.7 cm above the lower bar”.
     *
     * @param mm along the warp from the loom's own datum, any
     */
    public String at(Place place, double mm) {
        return said(place, shown().height(plan.above(place, mm)));
    }

    /**
     * The same with figures that can be read from afar.
     *
     * @param mm along the warp from the loom's own datum, any
     */
    public String figures(Place place, double mm) {
        return said(place, shown().figures(plan.above(place, mm)) + "\u00a0" + shown().unit());
    }

    /**
     * The height alone.
     *
     * @param mm along the warp from the loom's own datum, any
     */
    public String brief(Place place, double mm) {
        return shown().height(plan.above(place, mm));
    }

    private Shown shown() {
        return plan.piece().shown();
    }

    /** A height that was told already, with what it is said from. */
    public String said(Place place, String height) {
        return phrases.say("above." + plan.datum(place), Map.of("height", height));
    }

    /** “the lower bar”: what heights at an end are said from. */
    public String from(Place place) {
        return from(plan.datum(place));
    }

    private String from(Datum datum) {
        return phrases.say("datum." + datum);
    }
}

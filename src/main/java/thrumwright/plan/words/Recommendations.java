package thrumwright.plan.words;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.block.Setting;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Hem;
import thrumwright.plan.words.Advice.Topic;
import thrumwright.yarn.Yarn;

/** What the trade and the geometry recommend for a piece, each with its arithmetic and where it comes from. */
public final class Recommendations {
    /** The gap may be so much wider or narrower than the weft and still do (common practice, no source). */
    public static final double GAP_PLAY = 0.35;

    /** Three quarters of an inch, mm. */
    private static final double LEAST_PUBLISHED_HEM = 19.05;

    private final Piece piece;
    private final Shown shown;
    private final Phrases phrases;

    /** @param locale the language wanted; where there is no text in it, English */
    public Recommendations(Piece piece, Locale locale) {
        this.piece = piece;
        this.shown = piece.shown();
        this.phrases = Phrases.of("thrumwright.plan.advice", locale);
    }

    /**
     * The sett for warp and weft: between two ends there is room for one weft, s = D_w + d (the canon of K. Todd-Hooker);
     * and the closest that can be woven, s = D_w + t (derived).
     */
    public List<Advice> sett() {
        Yarn weft = piece.stripe(Place.START);
        double warp = piece.warpYarn().diameter();
        double best = 1 / (warp + weft.diameter());
        double closest = 1 / (warp + weft.beaten());
        Map<String, Object> values = values(weft);
        values.put("space", shown.fine(warp + weft.diameter()));
        values.put("gauge", shown.fine(warp + weft.beaten()));
        values.put("sett", density(best));
        values.put("closest", density(closest));
        return List.of(
                advice(Topic.SETT, best, "sett", values), advice(Topic.CLOSEST_SETT, closest, "closest", values));
    }

    /** How a weft fills the space between two ends, d ÷ (s − D_w) turned over: 1 is just right, more is loose. */
    public Advice gap(Yarn weft) {
        Setting setting = piece.setting(weft);
        double gap = setting.spacing() - setting.warp();
        double share = gap / weft.diameter();
        Map<String, Object> values = values(weft);
        values.put("space", shown.fine(setting.spacing()));
        values.put("gap", shown.fine(gap));
        String key = share > 1 + GAP_PLAY ? "gap-loose" : share < 1 - GAP_PLAY ? "gap-tight" : "gap-right";
        return advice(Topic.GAP, share, key, values);
    }

    /** Picks in a height, 1/t; half as many beads are seen up one rib (R. Mezoff). */
    public Advice picks(Yarn weft) {
        Map<String, Object> values = values(weft);
        values.put("picks", density(1 / weft.beaten()));
        values.put("beads", density(1 / (2 * weft.beaten())));
        return advice(Topic.PICKS, 1 / weft.beaten(), "picks", values);
    }

    /** Whether the weft hides the warp: on a rib every other pick shows, so d/(2t) of its height is covered (derived). */
    public Advice coverage(Yarn weft) {
        double share = Math.min(1, weft.diameter() / (2 * weft.beaten()));
        Map<String, Object> values = values(weft);
        values.put("share", shown.decimals(100 * share, 0));
        return advice(Topic.COVERAGE, share, share > 0.995 ? "coverage-full" : "coverage-part", values);
    }

    /**
     * Hem depth for a round bar, mm: (πb + 12 mm) ÷ 2 (quilt-guild and conservation guidance on hanging sleeves).
     *
     * @param bar thickness, mm, more than 0
     */
    public Advice bar(double bar) {
        double depth = Hem.Sleeve.barDepth(bar);
        return advice(
                Topic.BAR_DEPTH,
                depth,
                "bar",
                Map.of("bar", shown.height(bar), "ease", shown.height(Hem.Sleeve.EASE), "depth", shown.height(depth)));
    }

    /**
     * Hem depth for a slat, mm: b + h + half the ease of a sleeve, since the hem goes round b + h on each side (derived).
     *
     * @param wide and {@code thick}: its section, mm, more than 0
     */
    public Advice slat(double wide, double thick) {
        double depth = Hem.Sleeve.slatDepth(wide, thick);
        return advice(
                Topic.SLAT_DEPTH,
                depth,
                "slat",
                Map.of(
                        "wide", shown.height(wide),
                        "thick", shown.height(thick),
                        "ease", shown.height(Hem.Sleeve.EASE / 2),
                        "depth", shown.height(depth)));
    }

    /**
     * Hem depth behind a hook-and-loop strip, mm: the strip and 5 mm of its backing above and below (CCI Notes 13/4).
     *
     * @param strip its height, mm, more than 0
     */
    public Advice strip(double strip) {
        double depth = Hem.Sleeve.stripDepth(strip);
        return advice(
                Topic.STRIP_DEPTH,
                depth,
                "strip",
                Map.of(
                        "strip", shown.height(strip),
                        "edge", shown.height(Hem.Sleeve.STRIP_EDGE),
                        "depth", shown.height(depth)));
    }

    /**
     * How deep a hem comes out beside published ones: ¾ in to 1 in, 19 to 25 mm (J. Bellairs; N. Granquist).
     *
     * @param depth finished, mm, 0 or more
     */
    public Advice hem(double depth) {
        String key = depth < LEAST_PUBLISHED_HEM - 0.5 ? "hem-short" : "hem-published";
        return advice(
                Topic.HEM_DEPTH,
                depth,
                key,
                Map.of(
                        "depth", shown.height(depth),
                        "least", shown.height(LEAST_PUBLISHED_HEM),
                        "usual", shown.height(Unit.INCH.millimetres())));
    }

    /**
     * How high a heading of scrap yarn is beside published ones that space a warp: 2 to 4 in (<cite>Alpacas Magazine</cite>, Spring
     * 2010, p. 113).
     *
     * @param height mm, more than 0
     */
    public Advice scrap(double height) {
        double inch = Unit.INCH.millimetres();
        return advice(
                Topic.SCRAP_HEADING,
                height,
                "scrap",
                Map.of(
                        "height", shown.height(height),
                        "least", shown.height(2 * inch),
                        "most", shown.height(4 * inch)));
    }

    private Map<String, Object> values(Yarn weft) {
        Map<String, Object> values = new HashMap<>();
        values.put("warp", shown.fine(piece.warpYarn().diameter()));
        values.put("yarn", weft.name());
        values.put("weft", shown.fine(weft.diameter()));
        values.put("beaten", shown.fine(weft.beaten()));
        return values;
    }

    /** So many in a centimetre or an inch. */
    private String density(double perMillimetre) {
        boolean inches = shown.system() == UnitSystem.INCHES;
        Unit unit = inches ? Unit.INCH : Unit.CENTIMETRE;
        return shown.decimals(perMillimetre * unit.millimetres(), 1) + "/" + unit.symbol();
    }

    private Advice advice(Topic topic, double value, String key, Map<String, ?> values) {
        return new Advice(topic, value, phrases.say(key, values), phrases.say(key + ".source"));
    }
}

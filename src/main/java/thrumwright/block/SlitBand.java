package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Visit;
import thrumwright.measure.BadMeasure;

/**
 * A band of plain weave in parts side by side, each with a length of yarn of its own that turns back at the slit between it and
 * its neighbour, so that no pick runs across the whole hem and draws it in.
 *
 * @param endsPerPart about how many warp ends lie between two slits, {@link #LEAST} to {@link #MOST}
 * @param firstShed the shed of its first pick; empty: the next in turn
 */
public record SlitBand(Tag tag, Use use, int endsPerPart, Amount amount, Optional<Shed> firstShed)
        implements PlainWeave {
    /** A part can't be narrower: a pick goes over one end and under the next. */
    public static final int LEAST = 2;
    /** The widest part. */
    public static final int MOST = 500;

    /** Wider than any warp: nothing of it comes again across the warp. */
    private static final int NEVER_AGAIN = 20_000;

    public SlitBand {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        amount = PlainBand.inPicks(amount);
        if (endsPerPart < LEAST || endsPerPart > MOST) {
            throw new BadMeasure("slits.part", Map.of("least", LEAST, "most", MOST, "ends", endsPerPart));
        }
        Objects.requireNonNull(firstShed);
    }

    /** Warp ends in the parts, from the left: round(N/g) of them, differing by at most one, the larger at the left. */
    public List<Integer> parts(int ends) {
        int count = Math.max(1, Math.min((int) Math.round((double) ends / endsPerPart), ends / LEAST));
        List<Integer> parts = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            parts.add(ends / count + (i < ends % count ? 1 : 0));
        }
        return parts;
    }

    /** Σ (n(Nᵢ − 1)ℓ + (n − 1)·turn) over its parts. */
    @Override
    public double length(Setting setting) {
        return parts(setting.ends()).stream()
                .mapToDouble(part -> part(setting, part))
                .sum();
    }

    private double part(Setting setting, int ends) {
        return setting.withEnds(ends).plain(rowCount(setting));
    }

    @Override
    public double lengthOfEach(Setting setting) {
        return part(setting, parts(setting.ends()).get(0));
    }

    @Override
    public int lengths(Setting setting) {
        return parts(setting.ends()).size();
    }

    @Override
    public boolean inParts() {
        return true;
    }

    /** One for each part, from the left. */
    @Override
    public List<Strand> strands(Setting setting, List<Row> rows) {
        List<Strand> strands = new ArrayList<>();
        int first = 0;
        for (int part : parts(setting.ends())) {
            double moved = first * setting.spacing();
            boolean odd = first % 2 != 0;
            List<Row> own = rows.stream().map(row -> odd ? shifted(row) : row).toList();
            strands.add(new Strand(PlainBand.plainLegs(setting.withEnds(part), own).stream()
                    .map(leg -> moved(leg, moved))
                    .toList()));
            first += part;
        }
        return strands;
    }

    /** The same shed, told from a part whose left end is an odd one of the whole warp. */
    private static Row shifted(Row row) {
        return new Row(row.number(), row.shed().map(Shed::other), row.from(), row.lean());
    }

    private static Leg moved(Leg leg, double by) {
        List<Visit> visits = leg.route().visits().stream()
                .map(visit -> new Visit(visit.x() + by, visit.z(), visit.radius(), visit.sense(), visit.extraTurns()))
                .toList();
        return new Leg(new Route(visits, leg.route().from(), leg.route().to()), leg.fromY(), leg.middleY(), leg.toY());
    }

    @Override
    public boolean goesOn() {
        return false;
    }

    @Override
    public int period() {
        return NEVER_AGAIN;
    }

    @Override
    public int endsToShow() {
        return 8;
    }

    @Override
    public SlitBand onFew(int ends) {
        return withEndsPerPart(Math.max(LEAST, Math.min(endsPerPart, ends / 2)));
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("part", endsPerPart);
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(amount);
    }

    @Override
    public SlitBand withExtent(Amount other) {
        return withAmount(other);
    }

    @Override
    public List<String> told(Setting setting) {
        if (lengths(setting) == 1) {
            return List.of("plain.begin", weaving(setting), "plain.arc", "plain-facing.why", "plain.end");
        }
        return List.of(
                "slit-band.parts",
                "slit-band.begin",
                "slit-band.shed",
                weaving(setting),
                "plain.arc",
                "slit-band.why",
                "slit-band.end");
    }

    @Override
    public List<String> stages(int made) {
        return made == 1
                ? List.of("plain.stage.arc", "plain.stage.beat")
                : List.of("plain.stage.arc", "plain.stage.beat", "slit-band.stage.back");
    }

    @Override
    public String key() {
        return "slit-band";
    }

    @Override
    public String family() {
        return "plain";
    }

    @Override
    public boolean showsBesideDesign() {
        return true;
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.slitBand(this);
    }

    @Override
    public SlitBand mirrored() {
        return this;
    }

    @Override
    public SlitBand withTag(Tag other) {
        return new SlitBand(other, use, endsPerPart, amount, firstShed);
    }

    @Override
    public SlitBand withUse(Use other) {
        return new SlitBand(tag, other, endsPerPart, amount, firstShed);
    }

    public SlitBand withAmount(Amount other) {
        return new SlitBand(tag, use, endsPerPart, other, firstShed);
    }

    public SlitBand withEndsPerPart(int other) {
        return new SlitBand(tag, use, other, amount, firstShed);
    }

    @Override
    public SlitBand withRows(int other) {
        return withAmount(new Amount.Picks(other));
    }

    @Override
    public SlitBand withFirstShed(Optional<Shed> other) {
        return new SlitBand(tag, use, endsPerPart, amount, other);
    }
}

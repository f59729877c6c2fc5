package thrumwright.block;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.measure.BadMeasure;

/**
 * A band of plain weave.
 *
 * @param purpose what the band is for
 * @param firstShed the shed of its first pick; empty: the next in turn
 */
public record PlainBand(Tag tag, Use use, Purpose purpose, Amount amount, Optional<Shed> firstShed)
        implements PlainWeave {
    /** What a plain band is for. */
    public enum Purpose {
        /** Protects the edge and comes out later. */
        WASTE,
        /** Warp cord, woven hard, that keeps the hem straight. */
        STIFF,
        /** Lies behind the design when the hem is folded. */
        FACING,
        /** Anything else. */
        PLAIN
    }

    public PlainBand {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Objects.requireNonNull(purpose);
        amount = inPicks(amount);
        Objects.requireNonNull(firstShed);
    }

    /** An amount of plain weave, whose rows are picks. */
    static Amount inPicks(Amount amount) {
        if (amount instanceof Amount.Height high
                && !(high.height().mm() > 0 && high.height().mm() <= 2000)) {
            throw new BadMeasure("band.height", Map.of("height", high.height()));
        }
        return amount instanceof Amount.Rows rows ? new Amount.Picks(rows.rows()) : amount;
    }

    static List<Leg> plainLegs(Setting setting, List<Row> rows) {
        List<Leg> legs = new ArrayList<>();
        // picks of one direction and shed run alike
        Map<Shed, Route> rightward = new EnumMap<>(Shed.class);
        Map<Shed, Route> leftward = new EnumMap<>(Shed.class);
        for (int i = 0; i < rows.size(); i++) {
            Way way = Way.of(setting, rows.get(i));
            Shed shed = rows.get(i).shed().orElseThrow();
            boolean firstOver = shed.over(way.fromLeft(0));
            boolean lastOver = shed.over(way.fromLeft(setting.ends() - 1));
            double y = (i + 0.5) * setting.beaten();
            Route route = (way.rightward() ? rightward : leftward)
                    .computeIfAbsent(shed, any -> Route.of(way.plain(shed), Way.top(firstOver), Way.top(lastOver)));
            legs.add(Leg.level(route, y));
            if (i < rows.size() - 1) {
                legs.add(Leg.climbing(way.turn(lastOver), y, y + setting.beaten()));
            }
        }
        return legs;
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(amount);
    }

    @Override
    public PlainBand withExtent(Amount other) {
        return withAmount(other);
    }

    @Override
    public List<String> told(Setting setting) {
        return List.of("plain.begin", weaving(setting), "plain.arc", key() + ".why", "plain.end");
    }

    @Override
    public String family() {
        return "plain";
    }

    @Override
    public List<String> stages(int made) {
        return made == 1
                ? List.of("plain.stage.arc", "plain.stage.beat")
                : List.of("plain.stage.arc", "plain.stage.beat", "plain.stage.back");
    }

    @Override
    public String key() {
        return "plain-" + purpose.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public boolean showsBesideDesign() {
        return purpose == Purpose.FACING;
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.plainBand(this);
    }

    @Override
    public PlainBand mirrored() {
        return this;
    }

    @Override
    public PlainBand withTag(Tag other) {
        return new PlainBand(other, use, purpose, amount, firstShed);
    }

    @Override
    public PlainBand withUse(Use other) {
        return new PlainBand(tag, other, purpose, amount, firstShed);
    }

    public PlainBand withAmount(Amount other) {
        return new PlainBand(tag, use, purpose, other, firstShed);
    }

    @Override
    public PlainBand withRows(int other) {
        return withAmount(new Amount.Picks(other));
    }

    @Override
    public PlainBand withFirstShed(Optional<Shed> other) {
        return new PlainBand(tag, use, purpose, amount, other);
    }

    public PlainBand withPurpose(Purpose other) {
        return new PlainBand(tag, use, other, amount, firstShed);
    }
}

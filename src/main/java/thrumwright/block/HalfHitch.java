package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A row of double half hitches: each group of ends is wrapped twice, and the yarn goes on to the next.
 *
 * @param rows 1 or more
 * @param endsPerGroup warp ends that are hitched together, 1 or more
 */
public record HalfHitch(Tag tag, Use use, int rows, int endsPerGroup) implements YarnBlock {
    public HalfHitch {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Amount.checkRows(rows, "rows");
        Twining.checkGroup(endsPerGroup);
    }

    private static double rowHeight(Setting setting) {
        return Math.max(1.5 * setting.relaxed(), 2 * setting.beaten());
    }

    @Override
    public double height(Setting setting) {
        return rows * rowHeight(setting);
    }

    /**
     * In each row, for a group of m ends twice √((πD+2(m−1)s)²+(2t)²), and once along the whole span (N−1)s: wraps lead
     * back to where they began, so the way across is still to go. Between rows a turn that climbs the row's height.
     */
    @Override
    public double length(Setting setting) {
        int whole = setting.ends() / endsPerGroup;
        int rest = setting.ends() % endsPerGroup;
        double row =
                2 * whole * wrap(setting, endsPerGroup) + (rest == 0 ? 0 : 2 * wrap(setting, rest)) + setting.span();
        return rows * row + (rows - 1) * setting.turn(rowHeight(setting));
    }

    private static double wrap(Setting setting, int ends) {
        double round = Math.PI * setting.gauge() + 2 * (ends - 1) * setting.spacing();
        return Math.hypot(round, 2 * setting.beaten());
    }

    @Override
    public List<Row> rows(Setting setting, Course before) {
        return RowList.worked(rows, before, use, Optional.empty(), false);
    }

    @Override
    public List<Strand> strands(Setting setting, List<Row> made) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            Way way = Way.of(setting, made.get(i));
            double y = (i + 0.5) * rowHeight(setting);
            addRow(legs, setting, way, y);
            if (i < made.size() - 1) {
                legs.add(Leg.climbing(way.turn(true), y, y + rowHeight(setting)));
            }
        }
        return List.of(new Strand(legs));
    }

    private void addRow(List<Leg> legs, Setting setting, Way way, double y) {
        int at = 0;
        for (int foot = 0; foot < setting.ends(); foot += endsPerGroup) {
            int head = Math.min(foot + endsPerGroup, setting.ends()) - 1;
            if (head > at) {
                legs.add(Leg.level(way.flat(at, head, true), y));
            }
            legs.add(Leg.climbing(way.loop(head, foot), y - setting.beaten(), y + setting.beaten()));
            legs.add(Leg.climbing(way.loop(head, foot), y + setting.beaten(), y - setting.beaten()));
            at = head;
        }
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("group", endsPerGroup);
    }

    @Override
    public boolean crossesItself() {
        return true;
    }

    @Override
    public List<String> told(Setting setting) {
        List<String> told =
                new ArrayList<>(List.of("plain.begin", "half-hitch.begin", "half-hitch.stitch", "half-hitch.go-on"));
        if (rows > 1) {
            told.add("half-hitch.back");
        }
        told.add("plain.end");
        return told;
    }

    @Override
    public List<String> stages(int made) {
        return List.of("half-hitch.stage.round", "half-hitch.stage.through", "half-hitch.stage.tight");
    }

    @Override
    public String key() {
        return "half-hitch";
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Rows(rows));
    }

    @Override
    public boolean holds() {
        return true;
    }

    @Override
    public int period() {
        return endsPerGroup;
    }

    @Override
    public int longestFloat() {
        return endsPerGroup;
    }

    @Override
    public int endsToShow() {
        return 4 * endsPerGroup;
    }

    @Override
    public List<String> ownPlaces() {
        return List.of("group");
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.halfHitch(this);
    }

    @Override
    public HalfHitch mirrored() {
        return this;
    }

    @Override
    public HalfHitch withTag(Tag other) {
        return new HalfHitch(other, use, rows, endsPerGroup);
    }

    @Override
    public HalfHitch withUse(Use other) {
        return new HalfHitch(tag, other, rows, endsPerGroup);
    }

    @Override
    public HalfHitch withRows(int other) {
        return new HalfHitch(tag, use, other, endsPerGroup);
    }

    public HalfHitch withEndsPerGroup(int other) {
        return new HalfHitch(tag, use, rows, other);
    }
}

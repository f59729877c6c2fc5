package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;

/**
 * Two-strand twining: one yarn folded round the outermost end, its halves crossing in every gap.
 *
 * @param rows 1 or more
 * @param endsPerGroup warp ends that are taken together, 1 or more
 * @param first the twist of the first row
 * @param countered whether the twist changes from row to row
 */
public record Twining(Tag tag, Use use, int rows, int endsPerGroup, Lean first, boolean countered)
        implements YarnBlock {
    public Twining {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Objects.requireNonNull(first);
        Amount.checkRows(rows, "rows");
        checkGroup(endsPerGroup);
    }

    static void checkGroup(int ends) {
        if (ends < 1 || ends > 24) {
            throw new BadMeasure("block.group", Map.of("ends", ends));
        }
    }

    private int groups(Setting setting) {
        return (setting.ends() + endsPerGroup - 1) / endsPerGroup;
    }

    /** Two crossing strands can't lie at one height: 2t a row. */
    @Override
    public double height(Setting setting) {
        return 2 * rows * setting.beaten();
    }

    /** 2k[(G−1)√(ℓ²+t²) + (N−G)s] + πD/2 + 2(k−1)√((πD/2)²+(2t)²). */
    @Override
    public double length(Setting setting) {
        int groups = groups(setting);
        double row = (groups - 1) * Math.hypot(setting.space(), setting.beaten())
                + (setting.ends() - groups) * setting.spacing();
        return 2 * rows * row + setting.turn(0) + 2 * (rows - 1) * setting.turn(2 * setting.beaten());
    }

    @Override
    public List<Row> rows(Setting setting, Course before) {
        return RowList.worked(rows, before, use, Optional.of(first), countered);
    }

    @Override
    public List<Strand> strands(Setting setting, List<Row> made) {
        List<Leg> front = new ArrayList<>();
        List<Leg> back = new ArrayList<>();
        back.add(Leg.level(Way.of(setting, made.get(0)).fold(), setting.beaten()));
        boolean frontFirst = true;
        for (int i = 0; i < made.size(); i++) {
            boolean more = i < made.size() - 1;
            boolean ended = addRow(front, setting, made.get(i), i, frontFirst, more);
            addRow(back, setting, made.get(i), i, !frontFirst, more);
            frontFirst = !ended;
        }
        return List.of(new Strand(front), new Strand(back));
    }

    /**
     * One strand through one row. A strand that comes to the front below the other leaves above it: its stitch leans
     * up along the way.
     *
     * @return whether the strand ended in front
     */
    private boolean addRow(List<Leg> legs, Setting setting, Row row, int index, boolean startsOver, boolean more) {
        Way way = Way.of(setting, row);
        double y = (2 * index + 1) * setting.beaten();
        boolean up = (row.lean().orElseThrow() == Lean.Z) == way.rightward();
        double crossing = y + (up ? 1 : -1) * setting.beaten() / 2;
        double other = 2 * y - crossing;
        boolean over = startsOver;
        for (int end = 0; end < setting.ends(); ) {
            int last = Math.min(end + endsPerGroup, setting.ends()) - 1;
            if (last > end) {
                legs.add(Leg.level(way.flat(end, last, over), y));
            }
            if (last < setting.ends() - 1) {
                legs.add(new Leg(way.crossing(last, over), y, over ? crossing : other, y));
                over = !over;
            }
            end = last + 1;
        }
        if (more) {
            legs.add(Leg.climbing(way.turn(over), y, y + 2 * setting.beaten()));
        }
        return over;
    }

    @Override
    public boolean folded() {
        return true;
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("group", endsPerGroup);
    }

    @Override
    public List<String> told(Setting setting) {
        List<String> told = new ArrayList<>(List.of("twining.fold", "twining.cross", "twining.lean"));
        if (rows > 1) {
            told.add(countered ? "twining.countered" : "twining.again");
        }
        if (rows > 2) {
            told.add("rows.list");
        }
        if (rows > 1 && setting.ends() % endsPerGroup > 0) {
            told.add("twining.anew");
        }
        told.add("rows.key");
        told.add("twining.end");
        return told;
    }

    @Override
    public String whole() {
        return "twining.whole";
    }

    @Override
    public List<String> stages(int made) {
        return List.of("twining.stage.fold", "twining.stage.front", "twining.stage.back", "twining.stage.on");
    }

    @Override
    public String key() {
        return "twining";
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Rows(rows));
    }

    @Override
    public boolean fillsSpaces() {
        return true;
    }

    @Override
    public boolean holds() {
        return true;
    }

    @Override
    public int period() {
        return 2 * endsPerGroup;
    }

    @Override
    public int longestFloat() {
        return endsPerGroup;
    }

    @Override
    public List<String> ownPlaces() {
        return List.of("lean", "group");
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.twining(this);
    }

    @Override
    public Twining mirrored() {
        return withFirst(RowList.mirroredFirst(first, rows, countered));
    }

    @Override
    public Twining withTag(Tag other) {
        return new Twining(other, use, rows, endsPerGroup, first, countered);
    }

    @Override
    public Twining withUse(Use other) {
        return new Twining(tag, other, rows, endsPerGroup, first, countered);
    }

    @Override
    public Twining withRows(int other) {
        return new Twining(tag, use, other, endsPerGroup, first, countered);
    }

    @Override
    public Twining withLean(Lean other, boolean alternating) {
        return new Twining(tag, use, rows, endsPerGroup, other, alternating);
    }

    public Twining withFirst(Lean other) {
        return withLean(other, countered);
    }

    public Twining withCountered(boolean other) {
        return withLean(first, other);
    }

    public Twining withEndsPerGroup(int other) {
        return new Twining(tag, use, rows, other, first, countered);
    }
}

package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import thrumwright.measure.BadMeasure;

/**
 * Soumak: the yarn goes forward over some ends and back under fewer.
 *
 * @param rows 1 or more
 * @param over ends passed in front, more than {@code under}
 * @param under ends passed behind on the way back, 1 or more
 * @param first which way the first row's stitches lean
 * @param countered whether the lean changes from row to row
 */
public record Soumak(Tag tag, Use use, int rows, int over, int under, Lean first, boolean countered)
        implements YarnBlock {
    public Soumak {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Objects.requireNonNull(first);
        Amount.checkRows(rows, "rows");
        if (under < 1 || over <= under || over > 24) {
            throw new BadMeasure("soumak.not", Map.of("over", over, "under", under));
        }
    }

    /** f − u: how far each stitch gets on. */
    private int advance() {
        return over - under;
    }

    private int backUnder(Setting setting) {
        return Math.min(under, setting.ends());
    }

    /** Stitches in a row: ⌈(N−u)/a⌉ + 1. */
    private int stitches(Setting setting) {
        return (setting.ends() - backUnder(setting) + advance() - 1) / advance() + 1;
    }

    /** Of one row, mm, more than 0: d(1 + f/(f−u))/2; floats that pile up on a rib each add half a diameter. */
    public double rowHeight(Setting setting) {
        return setting.relaxed() * (1 + (double) over / advance()) / 2;
    }

    @Override
    public double height(Setting setting) {
        return rows * rowHeight(setting);
    }

    /**
     * In each row n stitches √((πD+(u−1)s)²+(2t)²), and between them n−1 floats. A float spans f' spaces, from where yarn came
     * up to the next right-hand peg, and comes down the 2t that the stitch climbed: √((f's)²+(2t)²). f' is f−1, or what is
     * left for the last one. Between rows a turn that climbs the row's height.
     */
    @Override
    public double length(Setting setting) {
        int stitches = stitches(setting);
        int back = backUnder(setting);
        double stitch = Math.hypot(Math.PI * setting.gauge() + (back - 1) * setting.spacing(), 2 * setting.beaten());
        double row = stitches * stitch;
        if (stitches > 1) {
            int last = setting.ends() - 1 - (stitches - 2) * advance();
            row += (stitches - 2) * flight(setting, over - 1) + flight(setting, last);
        }
        return rows * row + (rows - 1) * setting.turn(rowHeight(setting));
    }

    /** One float over so many spaces. */
    private static double flight(Setting setting, int spaces) {
        return Math.hypot(spaces * setting.spacing(), 2 * setting.beaten());
    }

    @Override
    public List<Row> rows(Setting setting, Course before) {
        return RowList.worked(rows, before, use, Optional.of(first), countered);
    }

    @Override
    public List<Strand> strands(Setting setting, List<Row> made) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < made.size(); i++) {
            addRow(legs, setting, made.get(i), i);
            if (i < made.size() - 1) {
                double y = (i + 0.5) * rowHeight(setting);
                legs.add(Leg.climbing(Way.of(setting, made.get(i)).turn(true), y, y + rowHeight(setting)));
            }
        }
        return List.of(new Strand(legs));
    }

    private void addRow(List<Leg> legs, Setting setting, Row row, int index) {
        Way way = Way.of(setting, row);
        int back = backUnder(setting);
        boolean up = (row.lean().orElseThrow() == Lean.Z) == way.rightward();
        double middle = (index + 0.5) * rowHeight(setting);
        double early = middle + (up ? -1 : 1) * setting.beaten();
        double late = 2 * middle - early;
        int head = back - 1;
        while (true) {
            int foot = head - back + 1;
            legs.add(Leg.climbing(way.wrap(head, foot), late, early));
            if (head == setting.ends() - 1) {
                return;
            }
            int next = Math.min(head + advance(), setting.ends() - 1);
            legs.add(Leg.climbing(way.flat(foot, next, true), early, late));
            head = next;
        }
    }

    @Override
    public Map<String, Integer> counts() {
        return Map.of("over", over, "under", under);
    }

    @Override
    public boolean crossesItself() {
        return true;
    }

    @Override
    public List<String> told(Setting setting) {
        List<String> told = new ArrayList<>(List.of("plain.begin", "soumak.begin", "soumak.stitch", "soumak.lean"));
        if (rows > 1) {
            told.add(countered ? "soumak.countered" : "soumak.again");
        }
        if (rows > 2) {
            told.add("rows.list");
        }
        told.add("rows.key");
        told.add("plain.end");
        return told;
    }

    @Override
    public List<String> stages(int made) {
        return List.of("soumak.stage.wrap", "soumak.stage.over", "soumak.stage.back");
    }

    @Override
    public String key() {
        return "soumak";
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Rows(rows));
    }

    @Override
    public boolean showsBesideDesign() {
        return true;
    }

    @Override
    public int period() {
        return advance();
    }

    @Override
    public int longestFloat() {
        return over;
    }

    @Override
    public int endsToShow() {
        return over + 2 * advance() + 1;
    }

    @Override
    public List<String> ownPlaces() {
        return List.of("lean", "over", "under");
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.soumak(this);
    }

    @Override
    public Soumak mirrored() {
        return withFirst(RowList.mirroredFirst(first, rows, countered));
    }

    @Override
    public Soumak withTag(Tag other) {
        return new Soumak(other, use, rows, over, under, first, countered);
    }

    @Override
    public Soumak withUse(Use other) {
        return new Soumak(tag, other, rows, over, under, first, countered);
    }

    @Override
    public Soumak withRows(int other) {
        return new Soumak(tag, use, other, over, under, first, countered);
    }

    @Override
    public Soumak withLean(Lean other, boolean alternating) {
        return new Soumak(tag, use, rows, over, under, other, alternating);
    }

    public Soumak withFirst(Lean other) {
        return withLean(other, countered);
    }

    public Soumak withCountered(boolean other) {
        return withLean(first, other);
    }

    public Soumak withOver(int other) {
        return new Soumak(tag, use, rows, other, under, first, countered);
    }

    public Soumak withUnder(int other) {
        return new Soumak(tag, use, rows, over, other, first, countered);
    }
}

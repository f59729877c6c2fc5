package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.HalfHitch;
import thrumwright.block.Lean;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.plan.Butterflies;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** What to take, what to do and which rows to work for one block. */
final class BlockWords {
    /** With more rows than this, those that only repeat are told in one line. */
    private static final int ROWS_TOLD = 16;

    private final Piece piece;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;
    private final ShedWords sheds;
    private final int ends;

    BlockWords(Plan plan, Phrases phrases, Words words) {
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.phrases = phrases;
        this.words = words;
        this.sheds = new ShedWords(phrases, words);
        this.ends = piece.warp().ends();
    }

    /** What to take in hand. */
    String take(Work work) {
        Butterflies butterflies = work.cut().butterflies();
        Map<String, Object> values = new HashMap<>();
        values.put("yarn", work.yarn().name());
        values.put("cut", shown.cut(work.cut().length()));
        values.put("widths", shown.halves(work.cut().widths()));
        values.put("of", phrases.say(widthsOf(piece)));
        values.put("count", butterflies.count());
        values.put("each", shown.cut(butterflies.each()));
        return phrases.say(butterflies.count() == 1 ? "take.one" : "take.several", values);
    }

    /** The key of the words for what widths are counted by. */
    static String widthsOf(Piece piece) {
        boolean loom = piece.habits().widthsOf() == Habits.WidthsOf.LOOM
                && piece.loom().uprights().isPresent();
        return loom ? "widths.loom" : "widths.warp";
    }

    /** What to do, in order. */
    List<String> sentences(Work work) {
        List<String> keys = new ArrayList<>(way(work));
        if (work.cut().butterflies().count() > work.block().together()) {
            keys.add("butterfly.join");
        }
        if (work.block().use().comesOut()) {
            keys.add("comes-out");
        }
        Map<String, Object> values = values(work);
        return keys.stream().map(each -> phrases.say(each, values)).toList();
    }

    private static List<String> way(Work work) {
        boolean more = work.rows().size() > 1;
        if (work.block() instanceof OrderingCord) {
            return cord(work.setting().posts().isPresent(), more);
        } else if (work.block() instanceof SpreadHeader header) {
            return header(header.strands() > 1, more);
        } else if (work.block() instanceof PlainBand) {
            String weave = more ? "plain.weave" : "plain.weave-one";
            return List.of("plain.begin", weave, "plain.arc", work.block().key() + ".why", "plain.end");
        } else if (work.block() instanceof Twining twining) {
            return twining(twining, work);
        } else if (work.block() instanceof Soumak soumak) {
            List<String> keys = new ArrayList<>(List.of("soumak.begin", "soumak.stitch", "soumak.lean"));
            addRowChange(keys, soumak.rows(), soumak.countered(), "soumak");
            keys.add("plain.end");
            return keys;
        }
        List<String> keys = new ArrayList<>(List.of("half-hitch.begin", "half-hitch.stitch", "half-hitch.go-on"));
        if (more) {
            keys.add("half-hitch.back");
        }
        keys.add("plain.end");
        return keys;
    }

    private static List<String> cord(boolean posts, boolean more) {
        List<String> keys = new ArrayList<>();
        keys.add(posts ? "ordering-cord.tie" : "ordering-cord.tie-without");
        keys.add("ordering-cord.weave");
        if (more) {
            keys.add(posts ? "ordering-cord.round" : "ordering-cord.back");
        }
        keys.add(posts ? "ordering-cord.tie-end" : "ordering-cord.tie-end-without");
        keys.add("ordering-cord.even");
        return keys;
    }

    private static List<String> header(boolean several, boolean more) {
        List<String> keys = new ArrayList<>();
        if (several) {
            keys.add("spread-header.strands");
        }
        keys.add("plain.begin");
        keys.add(more ? "plain.weave" : "plain.weave-one");
        keys.addAll(List.of("spread-header.weave", "spread-header.even", "spread-header.instead", "plain.end"));
        return keys;
    }

    private static List<String> twining(Twining twining, Work work) {
        List<String> keys = new ArrayList<>(List.of("twining.fold", "twining.cross", "twining.lean"));
        addRowChange(keys, twining.rows(), twining.countered(), "twining");
        if (twining.rows() > 1 && work.setting().ends() % twining.endsPerGroup() > 0) {
            keys.add("twining.anew");
        }
        keys.add("twining.end");
        return keys;
    }

    private static void addRowChange(List<String> keys, int rows, boolean countered, String kind) {
        if (rows > 1) {
            keys.add(kind + (countered ? ".countered" : ".again"));
        }
        if (rows > 2) {
            keys.add("rows.list");
        }
    }

    private Map<String, Object> values(Work work) {
        Map<String, Object> values = new HashMap<>();
        Row first = work.rows().get(0);
        values.put("rows", work.rows().size());
        values.put("side", words.side(work.begins()));
        values.put("otherSide", words.side(work.begins().other()));
        values.put("endSide", words.side(work.ends()));
        values.put("tail", shown.cut(piece.habits().tail().mm()));
        values.put("tie", shown.cut(piece.habits().tie().mm()));
        values.put("overlap", shown.cut(piece.habits().overlap().mm()));
        values.put("sett", piece.shown().typed(piece.warp().sett().text()));
        first.meets(work.setting().ends()).ifPresent(passing -> {
            values.put("meets", sheds.meets(passing, first.from()));
            values.put("byTurns", phrases.say("by-turns." + passing));
        });
        first.lean().ifPresent(lean -> {
            values.put("lean", phrases.say("lean." + lean));
            values.put("emerge", emerge(first.from(), lean));
        });
        if (work.rows().size() > 1) {
            next(work.rows().get(1), values);
        }
        ofKind(work, values);
        return values;
    }

    /** What the second row does. */
    private void next(Row row, Map<String, Object> values) {
        row.lean().ifPresent(lean -> {
            values.put("leanNext", phrases.say("lean.short." + lean));
            values.put("emergeNext", emerge(row.from(), lean));
        });
    }

    private void ofKind(Work work, Map<String, Object> values) {
        if (work.block() instanceof Twining twining) {
            groups(twining.endsPerGroup(), work, values);
        } else if (work.block() instanceof SpreadHeader header) {
            values.put("strands", header.strands());
            values.put("gauge", shown.fine(work.setting().gauge()));
        } else if (work.block() instanceof Soumak soumak) {
            int under = Math.min(soumak.under(), work.setting().ends());
            values.put("over", soumak.over());
            values.put("under", under);
            values.put("underOf", under == 1 ? "" : " " + under);
            values.put("underThe", ends(under));
            outermost(under, work, values);
        } else if (work.block() instanceof HalfHitch hitch) {
            groups(hitch.endsPerGroup(), work, values);
        }
    }

    private void groups(int size, Work work, Map<String, Object> values) {
        int all = work.setting().ends();
        values.put("groupThe", ends(size));
        values.put("rest", all % size == 0 ? "" : phrases.say("rest", Map.of("rest", all % size)));
        outermost(Math.min(size, all), work, values);
    }

    /** The ends with which the first row begins, and the second. */
    private void outermost(int count, Work work, Map<String, Object> values) {
        values.put("outermost", outermost(count, work.begins()));
        values.put("outermostThere", outermost(count, work.begins().other()));
        values.put("them", phrases.say(count == 1 ? "them.one" : "them.several"));
    }

    /** “the left edge end” or “the outermost 2 ends at the left”. */
    private String outermost(int count, Side side) {
        return phrases.say(
                count == 1 ? "outermost.one" : "outermost.several", Map.of("count", count, "side", words.side(side)));
    }

    /** “end” or “2 ends”, to stand after “the first” or “the next”. */
    private String ends(int count) {
        return phrases.say(count == 1 ? "ends.one" : "ends.several", Map.of("count", count));
    }

    /** A yarn that comes to the front below what lies there leans up along its way. */
    private String emerge(Side from, Lean lean) {
        boolean upAlongTheWay = (lean == Lean.Z) == (from == Side.LEFT);
        return phrases.say(upAlongTheWay ? "emerge.below" : "emerge.above");
    }

    /** The rows one by one; long runs that only alternate are told in one line. */
    List<RowLine> rows(Work work) {
        List<Row> rows = work.rows();
        List<RowLine> lines = new ArrayList<>();
        int told = rows.size() <= ROWS_TOLD ? rows.size() : 2;
        for (Row row : rows.subList(0, told)) {
            lines.add(new RowLine(Integer.toString(row.number()), 1, Optional.of(row.from()), text(row), brief(row)));
        }
        if (told < rows.size()) {
            lines.add(new RowLine(
                    (told + 1) + "–" + rows.size(),
                    rows.size() - told,
                    Optional.empty(),
                    phrases.say("rows.so-on"),
                    phrases.say("rows.so-on.brief")));
        }
        return lines;
    }

    private String text(Row row) {
        if (row.shed().isPresent()) {
            return sheds.meets(row.meets(ends).orElseThrow(), row.from());
        }
        return row.lean().map(lean -> leaning("row.lean", row, lean)).orElse(phrases.say("row.hitches"));
    }

    private String brief(Row row) {
        if (row.shed().isPresent()) {
            return sheds.brief(row.meets(ends).orElseThrow(), row.from());
        }
        return row.lean().map(lean -> leaning("row.lean.brief", row, lean)).orElse(phrases.say("row.hitches.brief"));
    }

    private String leaning(String key, Row row, Lean lean) {
        return phrases.say(key, Map.of("lean", phrases.say("lean.short." + lean), "emerge", emerge(row.from(), lean)));
    }
}

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

    BlockWords(Plan plan, Phrases phrases, Words words) {
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.phrases = phrases;
        this.words = words;
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
        List<String> keys = new ArrayList<>();
        String key = work.block().key();
        if (work.block() instanceof OrderingCord) {
            boolean posts = work.setting().posts().isPresent();
            keys.add(posts ? "ordering-cord.tie" : "ordering-cord.tie-without");
            keys.add(posts ? "ordering-cord.weave" : "ordering-cord.weave-without");
            keys.add("ordering-cord.even");
        } else if (work.block() instanceof SpreadHeader header) {
            if (header.strands() > 1) {
                keys.add("spread-header.strands");
            }
            keys.add("plain.begin");
            keys.add("spread-header.weave");
            keys.add("spread-header.even");
            keys.add("spread-header.instead");
            keys.add("plain.end");
        } else if (work.block() instanceof PlainBand) {
            keys.add("plain.begin");
            keys.add("plain.weave");
            keys.add(key + ".why");
            keys.add("plain.end");
        } else if (work.block() instanceof Twining twining) {
            keys.add("twining.fold");
            keys.add("twining.cross");
            keys.add("twining.lean");
            addRowChange(keys, twining.rows(), twining.countered(), "twining");
            keys.add("twining.end");
        } else if (work.block() instanceof Soumak soumak) {
            keys.add("soumak.begin");
            keys.add("soumak.stitch");
            keys.add("soumak.lean");
            addRowChange(keys, soumak.rows(), soumak.countered(), "soumak");
            keys.add("plain.end");
        } else {
            keys.add("half-hitch.begin");
            keys.add("half-hitch.stitch");
            keys.add("half-hitch.go-on");
            keys.add("plain.end");
        }
        if (work.cut().butterflies().count() > work.block().together()) {
            keys.add("butterfly.join");
        }
        if (work.block().use().comesOut()) {
            keys.add("comes-out");
        }
        Map<String, Object> values = values(work);
        return keys.stream().map(each -> phrases.say(each, values)).toList();
    }

    private static void addRowChange(List<String> keys, int rows, boolean countered, String kind) {
        if (rows > 1) {
            keys.add(kind + (countered ? ".countered" : ".again"));
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
        first.shed().ifPresent(shed -> values.put("shed", words.shed(shed)));
        first.lean().ifPresent(lean -> {
            values.put("lean", phrases.say("lean." + lean));
            values.put("emerge", emerge(first.from(), lean));
        });
        if (work.block() instanceof Twining twining) {
            values.put("groupThe", ends(twining.endsPerGroup()));
        } else if (work.block() instanceof SpreadHeader header) {
            values.put("strands", header.strands());
            values.put("gauge", shown.fine(work.setting().gauge()));
        } else if (work.block() instanceof Soumak soumak) {
            values.put("over", soumak.over());
            values.put("under", soumak.under());
            values.put("underThe", ends(soumak.under()));
        } else if (work.block() instanceof HalfHitch hitch) {
            values.put("groupThe", ends(hitch.endsPerGroup()));
        }
        return values;
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
            return words.shed(row.shed().get());
        }
        return row.lean().map(lean -> leaning("row.lean", row, lean)).orElse(phrases.say("row.hitches"));
    }

    private String brief(Row row) {
        if (row.shed().isPresent()) {
            return phrases.say("shed.brief." + row.shed().get());
        }
        return row.lean().map(lean -> leaning("row.lean.brief", row, lean)).orElse(phrases.say("row.hitches.brief"));
    }

    private String leaning(String key, Row row, Lean lean) {
        return phrases.say(key, Map.of("lean", phrases.say("lean.short." + lean), "emerge", emerge(row.from(), lean)));
    }
}

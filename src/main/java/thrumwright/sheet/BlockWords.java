package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Lean;
import thrumwright.block.Row;
import thrumwright.block.Side;
import thrumwright.block.SlitBand;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.plan.Butterflies;
import thrumwright.plan.Cut;
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
    private final LengthWords lengthWords;
    private final int ends;

    BlockWords(Plan plan, Phrases phrases, Words words) {
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.phrases = phrases;
        this.words = words;
        this.sheds = new ShedWords(phrases, words);
        this.lengthWords = new LengthWords(phrases, words);
        this.ends = piece.warp().ends();
    }

    /** What to take in hand. */
    String take(Work work) {
        return work.toCut().map(cut -> take(work, cut)).orElseGet(() -> lengthWords.noCut(work));
    }

    private String take(Work work, Cut cut) {
        Butterflies butterflies = cut.butterflies();
        Map<String, Object> values = new HashMap<>();
        values.put("yarn", words.yarn(work.yarn()));
        values.put("cut", shown.cut(cut.length()));
        values.put("widths", shown.halves(cut.widths()));
        values.put("of", phrases.say(widthsOf(piece)));
        values.put("count", butterflies.count());
        values.put("each", shown.cut(butterflies.each()));
        values.put("goesOn", lengthWords.goesOn(work));
        values.put("overlap", shown.cut(piece.habits().overlap().mm()));
        int lengths = work.block().lengths(work.setting());
        values.put("strands", lengths);
        values.put("share", butterflies.count() / lengths);
        return phrases.say(taken(work, butterflies.count()), values);
    }

    private static String taken(Work work, int count) {
        if (count == 1) {
            return "take.one";
        }
        int strands = work.block().lengths(work.setting());
        if (strands > 1 && work.block().inParts()) {
            return count == strands ? "take.parts" : "take.parts-shared";
        }
        if (strands > 1) {
            return count == strands ? "take.strands" : "take.strands-shared";
        }
        return "take.several";
    }

    /** The key of the words for what widths are counted by. */
    static String widthsOf(Piece piece) {
        return piece.countsInLoomWidths() ? "widths.loom" : "widths.warp";
    }

    /** What to do, in order. */
    List<Sentence> sentences(Work work) {
        List<String> keys = new ArrayList<>(lengthWords.told(work));
        if (work.oneLength().cut().butterflies().count() > work.block().lengths(work.setting())) {
            keys.add("butterfly.join");
        }
        if (!work.block().joins()
                && work.cut().length() > piece.habits().handful().mm()) {
            keys.add(0, work.block().whole());
        }
        if (work.block().use().comesOut()) {
            keys.add("comes-out");
        }
        Map<String, Object> values = values(work);
        return keys.stream().map(each -> Sentence.of(phrases, each, values)).toList();
    }

    /** What may hurt in it. */
    List<String> cautions(Work work) {
        return work.block().cautions().stream().map(phrases::say).toList();
    }

    /** What the sentences may name. */
    Map<String, Object> values(Work work) {
        Map<String, Object> values = new HashMap<>();
        Row first = work.rows().get(0);
        values.put("rows", work.rows().size());
        values.put("side", words.side(work.begins()));
        values.put("otherSide", words.side(work.begins().other()));
        values.put("endSide", words.side(work.ends()));
        lengthWords.neighbours(work, values);
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
        Map<String, Integer> counts = work.block().counts();
        values.putAll(counts);
        values.put("gauge", shown.height(work.setting().gauge()));
        if (work.block() instanceof SlitBand slits) {
            List<Integer> parts = slits.parts(work.setting().ends());
            values.put("parts", parts.size());
            values.put("sizes", new GroupWords(phrases).sizes(parts));
        }
        Optional.ofNullable(counts.get("group")).ifPresent(size -> groups(size, work, values));
        Optional.ofNullable(counts.get("under")).ifPresent(size -> {
            int under = Math.min(size, work.setting().ends());
            values.put("under", under);
            values.put("underOf", under == 1 ? "" : " " + under);
            values.put("underThe", ends(under));
            outermost(under, work, values);
        });
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
            lines.add(line(work, row));
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

    /** All rows one by one, however many there are. */
    List<RowLine> everyRow(Work work) {
        return work.rows().stream().map(row -> line(work, row)).toList();
    }

    private RowLine line(Work work, Row row) {
        return new RowLine(
                Integer.toString(row.number()), 1, Optional.of(row.from()), text(work, row), brief(work, row));
    }

    private String text(Work work, Row row) {
        if (row.shed().isPresent()) {
            String meets = sheds.meets(row.meets(ends).orElseThrow(), row.from());
            return piece.loom().sheds().named() ? sheds.named(meets, row.shed().get()) : meets;
        }
        return row.lean()
                .map(lean -> leaning("row.lean", row, lean))
                .orElseGet(() -> phrases.say("row." + work.block().key()));
    }

    private String brief(Work work, Row row) {
        if (row.shed().isPresent()) {
            return sheds.brief(row.meets(ends).orElseThrow(), row.from());
        }
        return row.lean()
                .map(lean -> leaning("row.lean.brief", row, lean))
                .orElseGet(() -> phrases.say("row." + work.block().key() + ".brief"));
    }

    private String leaning(String key, Row row, Lean lean) {
        return phrases.say(key, Map.of("lean", phrases.say("lean.short." + lean), "emerge", emerge(row.from(), lean)));
    }
}

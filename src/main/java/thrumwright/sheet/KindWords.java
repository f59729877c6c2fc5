package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.block.YarnCases;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** The keys of the sentences that tell how a kind is worked, in order; what only they name goes into the values. */
final class KindWords implements YarnCases<List<String>> {
    private final Work work;
    private final Map<String, Object> values;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;
    private final boolean more;

    KindWords(Work work, Map<String, Object> values, Shown shown, Phrases phrases, Words words) {
        this.work = work;
        this.values = values;
        this.shown = shown;
        this.phrases = phrases;
        this.words = words;
        this.more = work.rows().size() > 1;
    }

    @Override
    public List<String> orderingCord(OrderingCord cord) {
        boolean posts = work.setting().posts().isPresent();
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

    private String weave() {
        return more ? "plain.weave" : "plain.weave-one";
    }

    @Override
    public List<String> plainBand(PlainBand band) {
        return List.of("plain.begin", weave(), "plain.arc", band.key() + ".why", "plain.end");
    }

    @Override
    public List<String> spreadHeader(SpreadHeader header) {
        values.put("strands", header.strands());
        values.put("gauge", shown.fine(work.setting().gauge()));
        List<String> keys = new ArrayList<>();
        if (header.strands() > 1) {
            keys.add("spread-header.strands");
        }
        keys.addAll(List.of("plain.begin", weave()));
        keys.addAll(List.of("spread-header.weave", "spread-header.even", "spread-header.instead", "plain.end"));
        return keys;
    }

    @Override
    public List<String> twining(Twining twining) {
        groups(twining.endsPerGroup());
        List<String> keys = new ArrayList<>(List.of("twining.fold", "twining.cross", "twining.lean"));
        addRowChange(keys, twining.rows(), twining.countered(), "twining");
        if (twining.rows() > 1 && work.setting().ends() % twining.endsPerGroup() > 0) {
            keys.add("twining.anew");
        }
        keys.add("twining.end");
        return keys;
    }

    @Override
    public List<String> soumak(Soumak soumak) {
        int under = Math.min(soumak.under(), work.setting().ends());
        values.put("over", soumak.over());
        values.put("under", under);
        values.put("underOf", under == 1 ? "" : " " + under);
        values.put("underThe", ends(under));
        outermost(under);
        List<String> keys = new ArrayList<>(List.of("soumak.begin", "soumak.stitch", "soumak.lean"));
        addRowChange(keys, soumak.rows(), soumak.countered(), "soumak");
        keys.add("plain.end");
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

    @Override
    public List<String> halfHitch(HalfHitch hitch) {
        return hitches(hitch.endsPerGroup());
    }

    @Override
    public List<String> hemstitching(Hemstitching stitching) {
        return hitches(stitching.endsPerGroup());
    }

    private List<String> hitches(int endsPerGroup) {
        groups(endsPerGroup);
        List<String> keys = new ArrayList<>(List.of("half-hitch.begin", "half-hitch.stitch", "half-hitch.go-on"));
        if (more) {
            keys.add("half-hitch.back");
        }
        keys.add("plain.end");
        return keys;
    }

    private void groups(int size) {
        int all = work.setting().ends();
        values.put("groupThe", ends(size));
        values.put("rest", all % size == 0 ? "" : phrases.say("rest", Map.of("rest", all % size)));
        outermost(Math.min(size, all));
    }

    /** The ends with which the first row begins, and the second. */
    private void outermost(int count) {
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
}

package thrumwright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Phrases;
import thrumwright.plan.OneLength;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** How a yarn that goes on from block to block is told. */
record LengthWords(Phrases phrases, Words words) {
    /** What a block tells, in order: where its yarn goes on it begins with what hangs there, or isn't cut. */
    List<String> told(Work work) {
        OneLength length = work.oneLength();
        List<String> told = new ArrayList<>(work.block().told(work.setting()));
        if (length.before().isPresent()) {
            Collections.replaceAll(told, "plain.begin", "plain.goes-on");
            if (comesUpInside(length.before().get(), work.block())) {
                told.add(told.indexOf("plain.goes-on") + 1, "plain.outward");
            }
        }
        if (length.cutFrom().isPresent()) {
            told.add(told.indexOf("plain.begin") + 1, "plain.cut-from");
        }
        if (!length.after().isEmpty()) {
            Collections.replaceAll(told, "plain.end", "plain.led-on");
        }
        return told;
    }

    /** Whether the yarn lies in front inside the edge end, and is to go under that end. */
    private static boolean comesUpInside(YarnBlock before, YarnBlock block) {
        return block.plainWeave() && !before.plainWeave();
    }

    /** The names of the blocks before and after that share its yarn, for {@link #told}. */
    void neighbours(Work work, Map<String, Object> values) {
        work.oneLength().cutFrom().ifPresent(block -> values.put("cutFrom", words.name(block)));
        work.oneLength().before().ifPresent(block -> values.put("before", words.name(block)));
        work.oneLength().after().stream().findFirst().ifPresent(block -> values.put("next", words.name(block)));
    }

    /** Said instead of a cut. */
    String noCut(Work work) {
        YarnBlock before = work.oneLength().before().orElseThrow();
        return phrases.say("take.goes-on", Map.of("yarn", work.yarn().name(), "before", words.name(before)));
    }

    /** “ for stiff band and soumak”; empty where the yarn is for one block. */
    String goesOn(Work work) {
        return work.oneLength().after().isEmpty() ? "" : phrases.say("take.for", Map.of("blocks", all(work)));
    }

    /** The blocks that are woven from the yarn that a block begins. */
    String all(Work work) {
        List<String> names = Stream.concat(Stream.of(work.block()), work.oneLength().after().stream())
                .map(words::name)
                .toList();
        int last = names.size() - 1;
        return last == 0
                ? names.get(0)
                : String.join(phrases.say("list.comma"), names.subList(0, last))
                        + phrases.say("list.and")
                        + names.get(last);
    }
}

package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.measure.Phrases;

/** How many warp ends are in groups or parts. */
record GroupWords(Phrases phrases) {
    static boolean alike(List<Integer> groups) {
        return groups.stream().distinct().count() == 1;
    }

    /** “3 ends each”, or from the left “2 of 5 ends, then 20 of 4 ends, then 2 of 5 ends”. */
    String sizes(List<Integer> groups) {
        if (alike(groups)) {
            return phrases.say("sizes.alike", Map.of("ends", groups.get(0)));
        }
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= groups.size(); to++) {
            if (to == groups.size() || !groups.get(to).equals(groups.get(from))) {
                runs.add(phrases.say("sizes", Map.of("count", to - from, "ends", groups.get(from))));
                from = to;
            }
        }
        return String.join(phrases.say("list.then"), runs);
    }
}

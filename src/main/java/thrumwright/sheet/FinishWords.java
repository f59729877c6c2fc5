package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.EdgeFinish;
import thrumwright.block.FinishCases;
import thrumwright.block.KnotRows;
import thrumwright.block.TurnedEnds;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.words.Words;

/** What to do with the warp ends, and what to take care of. */
record FinishWords(Shown shown, Phrases phrases, Words words) {
    /** What the sentences may name. */
    Map<String, Object> values(Finish finish) {
        EdgeFinish block = finish.block();
        Map<String, Object> values = new HashMap<>();
        values.put("groups", finish.groups().size());
        values.put("sizes", new GroupWords(phrases).sizes(finish.groups()));
        values.put("all", finish.groups().stream().mapToInt(Integer::intValue).sum());
        values.put("hanging", shown.cut(block.length().map(Length::mm).orElse(0.0)));
        values.put("needed", shown.cut(finish.needed()));
        values.put("ends", block.endsPerGroup());
        if (block instanceof KnotRows knots) {
            values.put("rows", knots.rows());
            values.put(
                    "apart",
                    knots.apart().map(apart -> shown.height(apart.mm())).orElse(""));
        }
        if (block instanceof TurnedEnds turned) {
            values.put("over", turned.over());
        }
        if (block instanceof WovenEdge woven) {
            values.put("through", woven.through());
        }
        block.begins().ifPresent(from -> {
            values.put("side", words.side(from));
            values.put("otherSide", words.side(from.other()));
        });
        finish.wrapping().ifPresent(wrapping -> {
            values.put("yarn", wrapping.yarn().name());
            values.put("count", wrapping.count());
            values.put("each", shown.cut(wrapping.each().length()));
            values.put("height", shown.height(wrapping.height()));
            values.put("turns", ((WrappedTassels) block).turns());
        });
        return values;
    }

    /** What to take in hand; empty if nothing. */
    String take(Finish finish) {
        return finish.wrapping()
                .map(wrapping -> {
                    Map<String, Object> values = values(finish);
                    values.put("yarn", words.yarn(wrapping.yarn()));
                    return phrases.say("wrapped-tassels.take", values);
                })
                .orElse("");
    }

    /**
     * The sentences' keys, in order; knots that a hem hides are trimmed otherwise than a fringe.
     *
     * @param hem that the edge gets
     */
    static List<String> keys(Finish finish, Optional<Hem> hem) {
        String several = alike(finish) ? "off.finish.groups-alike" : "off.finish.groups";
        String groups = finish.groups().size() == 1 ? "off.finish.one" : several;
        List<String> keys =
                finish.block().of(new Keys(groups, finish.groups().stream().anyMatch(size -> size % 2 != 0)));
        if (!hidden(finish.block(), hem)) {
            return keys;
        }
        List<String> within = new ArrayList<>(keys);
        boolean turnedIn = hem.flatMap(Hem::firstTurn).isPresent();
        within.set(keys.size() - 1, turnedIn ? "off.finish.turned-in" : "off.finish.in-hem");
        return within;
    }

    /** Whether what would hang lies inside a hem; a band covers it as it is. */
    private static boolean hidden(EdgeFinish block, Optional<Hem> hem) {
        return block.hangs()
                && hem.filter(one -> one.folds() && one.band().isEmpty()).isPresent();
    }

    /** The keys for each kind; where ends are worked in groups it begins with what says how to divide them. */
    private record Keys(String groups, boolean odd) implements FinishCases<List<String>> {
        @Override
        public List<String> warpFinish(WarpFinish finish) {
            List<String> told = List.of(finish.key() + ".do", finish.key() + ".end");
            return finish.kind() == WarpFinish.Kind.DARNED ? told : List.of(groups, told.get(0), told.get(1));
        }

        @Override
        public List<String> knotRows(KnotRows knots) {
            List<String> keys = new ArrayList<>(List.of(groups, "knot-rows.first"));
            if (knots.rows() > 1) {
                keys.add((knots.split() ? "knot-rows.split" : "knot-rows.same")
                        + (knots.apart().isPresent() ? ".apart" : ".close"));
            }
            if (knots.rows() > 1 && knots.split() && odd) {
                keys.add("knot-rows.odd");
            }
            if (knots.rows() > 2 && knots.split()) {
                keys.add("knot-rows.by-turns");
            }
            keys.add("knot-rows.end");
            return keys;
        }

        @Override
        public List<String> turnedEnds(TurnedEnds turned) {
            List<String> keys = new ArrayList<>();
            keys.add(turned.over() == 1 ? "turned-ends.lay.one" : "turned-ends.lay.several");
            keys.add("turned-ends.go-on");
            if (turned.bothWays()) {
                keys.add("turned-ends.back-again");
            }
            keys.add(turned.fringe() ? "turned-ends.end-fringe" : "turned-ends.end");
            return keys;
        }

        @Override
        public List<String> wovenEdge(WovenEdge woven) {
            return List.of("woven-edge.lay", "woven-edge.back", "woven-edge.go-on", "turned-ends.end");
        }

        @Override
        public List<String> wrappedTassels(WrappedTassels tassels) {
            return List.of(
                    groups,
                    "wrapped-tassels.loop",
                    "wrapped-tassels.wrap",
                    "wrapped-tassels.draw",
                    "wrapped-tassels.end");
        }

        @Override
        public List<String> warpLoops(WarpLoops loops) {
            return List.of();
        }
    }

    List<String> cautions(EdgeFinish block, Optional<Hem> hem) {
        if (hidden(block, hem)) {
            return List.of("caution.blades");
        }
        return List.of(block.hangs() ? "caution.fringe" : "caution.needles");
    }

    private static boolean alike(Finish finish) {
        return GroupWords.alike(finish.groups());
    }
}

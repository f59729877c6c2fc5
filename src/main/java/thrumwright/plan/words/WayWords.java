package thrumwright.plan.words;

import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.Turning;
import thrumwright.block.UsualCases;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;

/** Says how a block is worked, where that can be put in a few words. */
final class WayWords extends UsualCases<Optional<String>> {
    /** How often it goes over the same ends. */
    private static final UsualCases<Integer> TIMES = new UsualCases<>() {
        @Override
        public Integer usual(Block block) {
            return 1;
        }

        @Override
        public Integer knotRows(KnotRows knots) {
            return knots.rows();
        }

        @Override
        public Integer wrappedTassels(WrappedTassels tassels) {
            return tassels.turns();
        }
    };

    private final Phrases phrases;
    private final Words words;
    private final Shown shown;

    WayWords(Phrases phrases, Words words, Shown shown) {
        this.phrases = phrases;
        this.words = words;
        this.shown = shown;
    }

    @Override
    public Optional<String> usual(Block block) {
        return block.finish()
                .map(this::fringe)
                .or(() -> block.woven()
                        .filter(woven -> phrases.has("way." + woven.key()))
                        .map(woven -> phrases.say("way." + woven.key(), woven.counts())));
    }

    @Override
    public Optional<String> warpLoops(WarpLoops loops) {
        return Optional.of(phrases.say("way.loops", Map.of("held", words.held(loops, shown))));
    }

    @Override
    public Optional<String> hemFold(HemFold fold) {
        String way = turning(fold.turning());
        return Optional.of(fold.support()
                .map(support ->
                        phrases.say("way.fold-for", Map.of("way", way, "support", words.support(support, shown))))
                .orElse(way));
    }

    private String turning(Turning turning) {
        if (turning instanceof Turning.Twice twice) {
            return phrases.say(
                    "way.fold-twice", Map.of("turn", shown.height(twice.first().mm())));
        } else if (turning instanceof Turning.Faced band) {
            return phrases.say(
                    "way.fold-faced", Map.of("width", shown.height(band.width().mm())));
        }
        return phrases.say(turning instanceof Turning.Mitred ? "way.fold-mitred" : "way.fold");
    }

    /** What becomes of the warp ends. */
    String fringe(EdgeFinish finish) {
        int times = finish.of(TIMES);
        String length = finish.length().map(one -> shown.height(one.mm())).orElse("");
        String key = "fringe." + finish.key();
        // what else lies at the back may hang
        String hanging = key + ".hanging";
        return phrases.say(
                finish.hangs() && phrases.has(hanging) ? hanging : key,
                Map.of("length", length, "rows", times, "turns", times, "ends", finish.endsPerGroup()));
    }

    /** “\\ like the stroke in S”. */
    String lean(Lean lean) {
        return phrases.say("lean." + Words.key(lean));
    }
}

package thrumwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Cases;
import thrumwright.block.HemFold;
import thrumwright.block.OpenWarp;
import thrumwright.block.Row;
import thrumwright.block.Support;
import thrumwright.block.UsualCases;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Phrases;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** What the drawings of a sheet show, in words, for those who hear it read. */
public final class PictureWords {
    private static final Cases<String> KEY = new UsualCases<>() {
        @Override
        public String usual(Block block) {
            return block.finish().isPresent() ? "finish" : "rows";
        }

        @Override
        public String hemFold(HemFold fold) {
            if (fold.mitred() || fold.band().isPresent()) {
                return fold.mitred() ? "fold-mitred" : "fold-faced";
            }
            return fold.support()
                            .filter(taken -> taken.kind() != Support.Kind.STRIP)
                            .isPresent()
                    ? "fold-filled"
                    : "fold";
        }

        @Override
        public String warpFinish(WarpFinish fringe) {
            return fringe.kind() == WarpFinish.Kind.DARNED ? "darned" : "finish";
        }

        @Override
        public String openWarp(OpenWarp gap) {
            return "gap";
        }

        @Override
        public String warpLoops(WarpLoops loops) {
            return "loops";
        }
    };

    private final Plan plan;
    private final Phrases phrases;
    private final Words words;

    public PictureWords(Plan plan, Locale locale) {
        this(plan, Phrases.of("thrumwright.sheet.steps", locale), new Words(locale));
    }

    PictureWords(Plan plan, Phrases phrases, Words words) {
        this.plan = plan;
        this.phrases = phrases;
        this.words = words;
    }

    /** The whole piece, from the bottom up. */
    public String piece() {
        return phrases.say(
                "picture.piece",
                Map.of(
                        "start", names(plan.start(), Map.of()),
                        "design",
                                plan.piece()
                                        .shown()
                                        .height(plan.piece().design().height().mm()),
                        "top", names(plan.top(), Map.of())));
    }

    /**
     * One end, from the bottom up.
     *
     * @param numbers of the steps by the identity of their blocks, as far as they stand in the drawing
     */
    public String end(Place place, Map<String, Integer> numbers) {
        EndPlan end = plan.end(place);
        return phrases.say("picture.end", Map.of("place", words.place(place), "blocks", names(end, numbers)));
    }

    /** A block of an end, as its step shows it; where there are rows, from which side and how the first sets out. */
    String step(EndPlan end, BlockPlan block) {
        String key = "picture." + block.block().of(KEY);
        String name = words.name(block.block());
        String place = words.place(end.place());
        Optional<Work> work = block.work().filter(each -> key.equals("picture.rows"));
        return work.map(each -> rows(name, place, each))
                .orElseGet(() -> phrases.say(key, Map.of("block", name, "place", place)));
    }

    private String rows(String name, String place, Work work) {
        Row first = work.rows().get(0);
        String side = words.side(first.from());
        return first.meets(work.setting().ends())
                .map(passing -> phrases.say(
                        "picture.rows.shed",
                        Map.of(
                                "block", name,
                                "place", place,
                                "side", side,
                                "meets", new ShedWords(phrases, words).meets(passing, first.from()))))
                .orElseGet(() -> phrases.say("picture.rows", Map.of("block", name, "place", place, "side", side)));
    }

    private String names(EndPlan end, Map<String, Integer> numbers) {
        if (end.blocks().isEmpty()) {
            return phrases.say("picture.nothing");
        }
        List<String> names = new ArrayList<>();
        for (BlockPlan block : end.blocks()) {
            Integer number = numbers.get(block.block().id());
            String name = words.name(block.block());
            names.add(number == null ? name : phrases.say("picture.numbered", Map.of("block", name, "step", number)));
        }
        return String.join(", ", names);
    }
}

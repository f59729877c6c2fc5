package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.Hemstitching;
import thrumwright.block.OpenWarp;
import thrumwright.block.UsualCases;
import thrumwright.block.WarpLoops;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;

/** What must be read from the loom of blocks that aren’t told by their rows alone. */
final class LargeWords extends UsualCases<List<String>> {
    private final CardVoice voice;
    private final EndPlan end;

    LargeWords(CardVoice voice, EndPlan end) {
        this.voice = voice;
        this.end = end;
    }

    @Override
    public List<String> usual(Block block) {
        return block.finish().map(this::finish).orElse(List.of());
    }

    /** The hands need free warp beyond the edge. */
    private List<String> finish(EdgeFinish finish) {
        return end.finish().stream()
                .filter(one -> one.block().id().equals(finish.id()) && one.needed() > 0)
                .map(Finish::needed)
                .map(needed -> say("card.finish", Map.of("free", voice.height(needed))))
                .toList();
    }

    @Override
    public List<String> warpLoops(WarpLoops loops) {
        return List.of(say(end.place() == Place.START ? "card.warp-loops" : "card.warp-loops.top", Map.of()));
    }

    @Override
    public List<String> hemFold(HemFold fold) {
        List<String> words = new ArrayList<>(List.of(say("card.hem-fold", Map.of())));
        end.hem()
                .filter(hem -> hem.blockId().equals(fold.id()) && hem.folds())
                .map(Hem::depth)
                .ifPresent(depth -> words.add(say("card.hem-fold.depth", Map.of("depth", voice.height(depth)))));
        return words;
    }

    @Override
    public List<String> openWarp(OpenWarp gap) {
        return List.of(
                say("card.open-warp", Map.of("height", voice.height(gap.height().mm()))));
    }

    @Override
    public List<String> hemstitching(Hemstitching stitching) {
        boolean first = stitching.round() == Hemstitching.Round.FIRST;
        return List.of(say(first ? "card.hemstitching.first" : "card.hemstitching.last", stitching.counts()));
    }

    private String say(String key, Map<String, ?> values) {
        return voice.phrases().say(key, values);
    }
}

package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HemFold;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Row;
import thrumwright.block.Shed;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.block.WarpLoops;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Finish;
import thrumwright.plan.Hem;
import thrumwright.plan.Mitre;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnBand;
import thrumwright.plan.Work;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/** Looks one end over. */
final class EndFindings {
    /** A hem shallower than this won't lie flat, mm (common practice, no source). */
    private static final double SHALLOW = 10;

    /** Loops that stand out farther than this can't be covered by easing the last picks outwards, mm (common practice, no source). */
    private static final double LOOSE = 5;

    /** A header that fills less of the way from end to end parts them too little (common practice, no source). */
    private static final double SPREADS = 0.7;

    private final Piece piece;
    private final EndPlan end;
    private final Words words;
    private final Shown shown;
    private final RepairFinder repairs;
    private final List<Finding> found = new ArrayList<>();

    EndFindings(Plan plan, EndPlan end, Words words, RepairFinder repairs) {
        this.piece = plan.piece();
        this.end = end;
        this.words = words;
        this.shown = piece.shown();
        this.repairs = repairs;
    }

    List<Finding> all() {
        if (end.blocks().isEmpty()) {
            add(Code.NOTHING_HERE, Optional.empty(), Map.of(), repairs.nothingHere(end));
            return found;
        }
        for (BlockPlan block : end.blocks()) {
            block.work().ifPresent(work -> work(block, work));
        }
        sheds();
        if (closed()) {
            loops();
        } else {
            protection();
        }
        end.hem().ifPresent(this::hem);
        end.finish().ifPresent(this::finish);
        return found;
    }

    private void work(BlockPlan block, Work work) {
        if (shed(work) && work.setting().jammed()) {
            about(
                    Code.TOO_THICK,
                    block,
                    Map.of(
                            "yarn", work.yarn().name(),
                            "gauge", shown.fine(work.setting().gauge()),
                            "space", shown.fine(work.setting().spacing())));
        }
        if (work.block() instanceof OrderingCord && work.setting().posts().isEmpty()) {
            about(Code.NO_POSTS, block, Map.of());
        }
        if (work.block() instanceof SpreadHeader
                && work.setting().gauge() < SPREADS * work.setting().spacing()) {
            about(
                    Code.SPREADS_LITTLE,
                    block,
                    Map.of(
                            "yarn", work.yarn().name(),
                            "gauge", shown.fine(work.setting().gauge()),
                            "space", shown.fine(work.setting().spacing())));
        }
        Yarn stripe = piece.stripe(end.place());
        if (end.hem().isPresent()
                && showsBesideDesign(work)
                && !work.yarn().colour().equals(stripe.colour())) {
            String key = end.place() == Place.START ? "stripe.first" : "stripe.last";
            about(
                    Code.OTHER_COLOUR,
                    block,
                    Map.of(
                            "yarn", work.yarn().name(),
                            "stripe", stripe.name(),
                            "which", words.say(key)),
                    repairs.stripeYarn(end, block));
        }
    }

    private static boolean shed(Work work) {
        return work.block() instanceof PlainBand
                || work.block() instanceof OrderingCord
                || work.block() instanceof SpreadHeader
                || work.block() instanceof Twining;
    }

    private static boolean showsBesideDesign(Work work) {
        return work.block() instanceof Soumak
                || work.block() instanceof PlainBand band && band.purpose() == PlainBand.Purpose.FACING;
    }

    /** Two neighbouring plain picks in one shed, with nothing woven between them, would lie as one. */
    private void sheds() {
        Optional<Shed> last = knownBefore();
        for (BlockPlan block : end.blocks()) {
            if (block.work().isEmpty()) {
                continue;
            }
            List<Row> rows = block.work().get().rows();
            Optional<Shed> first = rows.get(0).shed();
            if (first.isPresent() && first.equals(last)) {
                about(Code.SAME_SHED, block, Map.of("shed", words.shed(first.get())), repairs.sameShed(end, block));
            }
            last = rows.get(rows.size() - 1).shed();
        }
    }

    private Optional<Shed> knownBefore() {
        return end.place() == Place.TOP ? piece.design().lastShed() : Optional.empty();
    }

    private void protection() {
        boolean faced = end.hem().flatMap(Hem::band).isPresent();
        boolean holds = (faced ? end.blocks() : outside())
                .stream().anyMatch(block -> block.stays() && RepairFinder.holds(block.block()));
        if (!holds) {
            add(Code.NOTHING_HOLDS, Optional.empty(), Map.of(), repairs.nothingHolds(end));
        }
        boolean waste = end.blocks().stream().anyMatch(block -> block.comesOut() && block.block() instanceof PlainBand);
        if (!waste) {
            add(Code.NO_WASTE, Optional.empty(), Map.of(), repairs.noWaste(end));
        }
    }

    /** What lies on the hem's side of the fold; everything where there is no fold. */
    private List<BlockPlan> outside() {
        if (end.hem().isEmpty()) {
            return end.blocks();
        }
        int fold = foldIndex();
        return end.place() == Place.START
                ? end.blocks().subList(0, fold)
                : end.blocks().subList(fold + 1, end.blocks().size());
    }

    private int foldIndex() {
        String id = end.hem().orElseThrow().blockId();
        for (int i = 0; i < end.blocks().size(); i++) {
            if (end.blocks().get(i).block().id().equals(id)) {
                return i;
            }
        }
        throw new IllegalStateException("a hem has its fold");
    }

    private boolean closed() {
        return end.blocks().stream().anyMatch(block -> block.block() instanceof WarpLoops);
    }

    /** A closed edge has no warp ends to work with, and needs nothing that comes out. */
    private void loops() {
        for (BlockPlan block : end.blocks()) {
            if (block.block() instanceof WarpLoops loops) {
                double out = loops.standOut(piece.setting(piece.warpYarn()));
                if (out > LOOSE) {
                    about(
                            Code.LOOPS_STAND_OUT,
                            block,
                            Map.of("out", shown.fine(out), "held", words.held(loops, shown)));
                }
            } else if (block.block() instanceof EdgeFinish) {
                about(Code.FINISH_ON_LOOPS, block, Map.of());
            } else if (block.comesOut()) {
                about(Code.OUT_OF_LOOPS, block, Map.of("height", shown.height(block.height())));
            }
        }
    }

    private void hem(Hem hem) {
        Block fold = end.blocks().get(foldIndex()).block();
        if (end.blocks().stream()
                        .filter(block -> block.block() instanceof HemFold)
                        .count()
                > 1) {
            about(Code.SEVERAL_FOLDS, fold, Map.of(), repairs.severalFolds(end, hem));
        }
        if (hem.band().isPresent()) {
            band(hem, hem.band().get(), fold);
            return;
        }
        if (!(hem.cloth() > 0)) {
            about(Code.HEM_EMPTY, fold, Map.of());
            return;
        }
        boolean stiff = outside().stream().anyMatch(block -> RepairFinder.band(block.block(), PlainBand.Purpose.STIFF));
        if (!stiff) {
            about(Code.NO_STIFF_BAND, fold, Map.of(), repairs.noStiffBand(end));
        }
        depth(hem, fold);
        firstTurn(hem, fold);
        sleeve(hem, fold);
        hem.mitre().ifPresent(mitre -> mitre(mitre, fold));
    }

    /** What a band needs to cover all and to take what it is to take, mm. */
    private static double widest(Hem hem, SewnBand band) {
        return Math.max(band.needed(), hem.sleeve().map(Hem.Sleeve::depth).orElse(0.0));
    }

    private void mitre(Mitre mitre, Block fold) {
        double width = piece.warp().clothWidth();
        if (mitre.between(width) < 0) {
            about(
                    Code.MITRES_MEET,
                    fold,
                    Map.of("leg", shown.height(mitre.leg()), "width", shown.height(width)),
                    repairs.hemDepth(end, mitre.between(width) / 2));
        }
    }

    private void band(Hem hem, SewnBand band, Block fold) {
        double deepest = piece.design().height().mm() / 3;
        Map<String, Object> values = Map.of(
                "width", shown.height(band.width()),
                "turned", shown.height(band.turned()),
                "ends", shown.height(band.trimmed() ? SewnBand.SHORTEST : band.ends()),
                "beyond", shown.height(SewnBand.BEYOND),
                "needed", shown.height(band.needed()),
                "depth", shown.height(band.depth()),
                "most", shown.height(deepest));
        if (!band.covers()) {
            about(Code.BAND_TOO_NARROW, fold, values, repairs.bandWidth(end, fold, widest(hem, band)));
        } else if (band.depth() > deepest) {
            about(Code.BAND_TOO_WIDE, fold, values);
        }
        hem.sleeve()
                .filter(sleeve -> hem.room() < sleeve.depth())
                .ifPresent(sleeve -> about(
                        Code.BAND_TOO_NARROW_FOR_SUPPORT,
                        fold,
                        Map.of(
                                "support", words.support(sleeve.support(), shown),
                                "needed", shown.height(sleeve.depth()),
                                "width", shown.height(band.width())),
                        repairs.bandWidth(end, fold, widest(hem, band))));
    }

    private void depth(Hem hem, Block fold) {
        double deepest = piece.design().height().mm() / 3;
        Map<String, Object> values = Map.of(
                "depth", near(hem.depth(), deepest) ? shown.fine(hem.depth()) : shown.height(hem.depth()),
                "least", shown.height(SHALLOW),
                "most", shown.height(deepest));
        if (hem.depth() < SHALLOW) {
            about(Code.HEM_SHALLOW, fold, values, repairs.hemDepth(end, SHALLOW - hem.depth()));
        } else if (hem.depth() > deepest) {
            about(Code.HEM_DEEP, fold, values, repairs.hemDepth(end, deepest - hem.depth()));
        }
    }

    /** Whether rounding would hide on which side of a limit it lies. */
    private static boolean near(double depth, double deepest) {
        return Math.abs(depth - SHALLOW) < 0.5 || Math.abs(depth - deepest) < 0.5;
    }

    private void firstTurn(Hem hem, Block fold) {
        hem.firstTurn()
                .filter(turn -> turn > hem.cloth() / 2)
                .ifPresent(turn -> about(
                        Code.FIRST_TURN_TOO_DEEP,
                        fold,
                        Map.of(
                                "turn",
                                shown.height(turn),
                                "cloth",
                                shown.height(hem.cloth()),
                                "most",
                                shown.height(hem.cloth() / 2)),
                        repairs.firstTurn(end, hem)));
    }

    private void sleeve(Hem hem, Block fold) {
        hem.sleeve()
                .filter(sleeve -> hem.depth() < sleeve.depth())
                .ifPresent(sleeve -> about(
                        Code.SLEEVE_TOO_NARROW,
                        fold,
                        Map.of(
                                "support", words.support(sleeve.support(), shown),
                                "needed", shown.height(sleeve.depth()),
                                "depth", shown.height(hem.depth()),
                                "more", shown.height(sleeve.depth() - hem.depth())),
                        repairs.hemDepth(end, sleeve.depth() - hem.depth())));
    }

    private void finish(Finish finish) {
        List<Block> finishes = end.blocks().stream()
                .map(BlockPlan::block)
                .filter(EdgeFinish.class::isInstance)
                .toList();
        // of loops and something else the loops speak
        boolean alike = !closed() || finishes.stream().allMatch(WarpLoops.class::isInstance);
        if (finishes.size() > 1 && alike) {
            about(Code.SEVERAL_FINISHES, finish.block(), Map.of(), repairs.severalFinishes(end, finish));
        }
        finish.wrapping()
                .filter(wrapping -> wrapping.height() >= hanging(finish))
                .ifPresent(wrapping -> about(
                        Code.WRAPPING_TOO_HIGH,
                        finish.block(),
                        Map.of("height", shown.height(wrapping.height()), "hanging", shown.height(hanging(finish)))));
        if (end.loops().isEmpty() && finish.free() < finish.needed()) {
            about(
                    Code.FREE_WARP_SHORT,
                    finish.block(),
                    Map.of(
                            "needed", shown.height(finish.needed()),
                            "free", shown.height(Math.max(0, finish.free())),
                            "more", shown.height(finish.needed() - finish.free())),
                    repairs.freeWarp(end, finish));
        }
    }

    private static double hanging(Finish finish) {
        return finish.block().length().map(Length::mm).orElse(0.0);
    }

    private void about(Code code, BlockPlan block, Map<String, ?> values) {
        about(code, block.block(), values, Optional.empty());
    }

    private void about(Code code, BlockPlan block, Map<String, ?> values, Optional<Repair> repair) {
        about(code, block.block(), values, repair);
    }

    private void about(Code code, Block block, Map<String, ?> values) {
        about(code, block, values, Optional.empty());
    }

    private void about(Code code, Block block, Map<String, ?> values, Optional<Repair> repair) {
        Map<String, Object> named = new HashMap<>(values);
        named.put("block", words.name(block));
        add(code, Optional.of(block.id()), named, repair);
    }

    private void add(Code code, Optional<String> blockId, Map<String, ?> values, Optional<Repair> repair) {
        Map<String, Object> placed = new HashMap<>(values);
        placed.put("place", words.place(end.place()));
        placed.put("Place", capitalised(words.place(end.place())));
        found.add(words.finding(code, Optional.of(end.place()), blockId, placed, repair));
    }

    private static String capitalised(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

package thrumwright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Label;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Place;
import thrumwright.plan.HemStitch;
import thrumwright.plan.Lining;
import thrumwright.plan.Plan;
import thrumwright.plan.SewnCord;

/** What is sewn to a piece before it is hung or laid down: a cord along its edges, a lining, a label. */
final class SewnOnWords {
    /** How large a label is, mm (common practice, no source). */
    private static final double LABEL_WIDE = 100;

    private static final double LABEL_HIGH = 60;

    private static final double LABEL_WIDE_INCHES = 4;

    private static final double LABEL_HIGH_INCHES = 2.5;

    private final Plan plan;
    private final Destiny destiny;
    private final Phrases phrases;
    private final Shown shown;

    SewnOnWords(Plan plan, Phrases phrases) {
        this.plan = plan;
        this.destiny = plan.piece().destiny();
        this.phrases = phrases;
        this.shown = plan.piece().shown();
    }

    /**
     * A step's words.
     *
     * @param key of the step; its title stands under “off.” and that, and “.title”
     */
    record Told(String key, Map<String, Object> values, List<String> keys, List<String> cautions) {
        String titleKey() {
            return "off." + key;
        }
    }

    /** In the order of the work. */
    List<Told> steps() {
        List<Told> steps = new ArrayList<>();
        destiny.cord().ifPresent(cord -> steps.add(cord(cord, plan.sewnCord().orElseThrow())));
        plan.lining().ifPresent(lining -> steps.add(lining(lining)));
        destiny.label().ifPresent(label -> steps.add(label(label)));
        return steps;
    }

    /** What a seam so long takes, through the cloth of the design. */
    static Map<String, Object> seam(Plan plan, double length) {
        double cloth = plan.piece().warpYarn().diameter()
                + 2 * plan.piece().stripe(Place.START).beaten();
        HemStitch stitches = HemStitch.of(length, cloth, plan.piece().habits());
        Shown shown = plan.piece().shown();
        return Map.of(
                "spacing", shown.height(HemStitch.spacing(shown.system())),
                "stitches", stitches.stitches(),
                "threads", stitches.threads(),
                "each", shown.cut(stitches.each()));
    }

    private Told cord(EdgeCord cord, SewnCord sewn) {
        Map<String, Object> values = new HashMap<>(seam(plan, sewn.seam()));
        values.put("thick", shown.height(cord.thick().mm()));
        values.put("strands", sewn.strands());
        values.put("strand", shown.cut(sewn.strand()));
        values.put("yarn", sewn.yarn().name());
        values.put("count", sewn.count());
        values.put("total", shown.total(sewn.yarnLength()));
        values.put("length", shown.cut(sewn.length()));
        values.put("tucked", shown.height(sewn.tucked()));
        String along = cord.along().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Told(
                "cord",
                values,
                List.of(
                        cord.plaited() ? "off.cord.plait" : "off.cord.ply",
                        "off.cord.length",
                        "off.cord.yarn",
                        "off.cord.lay." + along,
                        "off.cord.sew",
                        "off.cord.end." + (sewn.count() == 1 ? "meet" : "tuck")),
                List.of("caution.needles", "caution.small-children"));
    }

    private Told lining(Lining lining) {
        Map<String, Object> values = new HashMap<>(seam(plan, lining.seam()));
        values.put("width", shown.cut(lining.cutWidth()));
        values.put("height", shown.cut(lining.cutHeight()));
        values.put("allowance", shown.height(lining.allowance()));
        values.put("margin", shown.height(lining.margin()));
        values.put("below", shown.height(lining.below()));
        return new Told(
                "lining",
                values,
                List.of(
                        "off.lining.cut",
                        "off.lining.turn",
                        "off.lining.pin",
                        "off.lining.sew",
                        "off.lining.open",
                        lining.below() > lining.margin() ? "off.lining.bar" : "off.lining.strip"),
                List.of("caution.needles"));
    }

    private Told label(Label label) {
        Map<String, Object> values = new HashMap<>();
        values.put("text", text(label));
        values.put("wide", shown.height(shown.system().length(LABEL_WIDE, LABEL_WIDE_INCHES)));
        values.put("high", shown.height(shown.system().length(LABEL_HIGH, LABEL_HIGH_INCHES)));
        String where = destiny.mounted() ? "board" : destiny.hung() && destiny.lined() ? "lining" : "back";
        return new Told(
                "label",
                values,
                List.of("off.label.write", "off.label.sew." + where, "off.label.rules"),
                List.of("caution.needles"));
    }

    private String text(Label label) {
        List<String> lines = new ArrayList<>();
        Optional.of(plan.piece().title()).filter(title -> !title.isBlank()).ifPresent(lines::add);
        lines.add(said(label.maker().isBlank() ? "label.maker-blank" : "label.maker", Map.of("maker", label.maker())));
        lines.add(said(label.year().isBlank() ? "label.year-blank" : "label.year", Map.of("year", label.year())));
        lines.add(said(
                "label.size",
                Map.of("width", shown.height(plan.finishedWidth()), "height", shown.height(plan.finishedHeight()))));
        lines.add(new BlockingWords(plan)
                .fibres().stream()
                        .map(fibre -> phrases.say("label.fibre." + fibre.name().toLowerCase(Locale.ROOT)))
                        .reduce((one, next) -> one + phrases.say("label.and") + next)
                        .orElseThrow());
        boolean lies = destiny.madeFor().equals(Optional.of(MadeFor.FLOOR_OR_TABLE));
        lines.add(phrases.say(lies ? "label.care.lies" : "label.care.hangs"));
        return String.join(phrases.say("label.next"), lines);
    }

    private String said(String key, Map<String, ?> values) {
        return phrases.say(key, values);
    }
}

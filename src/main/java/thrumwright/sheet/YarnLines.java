package thrumwright.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.plan.BandTotal;
import thrumwright.plan.DesignWeft;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Yarn;

/** Says what yarns come to. */
final class YarnLines {
    private final UnitSystem units;
    private final Shown shown;
    private final Phrases phrases;
    private final Words words;

    YarnLines(Piece piece, Phrases phrases, Words words) {
        this.units = piece.habits().units();
        this.shown = piece.shown();
        this.phrases = phrases;
        this.words = words;
    }

    /** @param buying whether to say how much to buy */
    YarnLine line(YarnTotal total, List<Plan> plans, boolean buying) {
        return new YarnLine(
                Optional.of(total.yarn()),
                total.yarn().name(),
                String.join(", ", uses(total, plans)),
                shown.total(total.length()),
                shown.mass(total.grams()),
                buying ? buy(total) : "");
    }

    /** The bands that hems are faced with. */
    List<YarnLine> bands(List<Plan> plans) {
        return BandTotal.of(plans).stream()
                .map(band -> new YarnLine(
                        Optional.empty(),
                        words.band(band.width(), band.thickness(), shown),
                        phrases.say("use.band"),
                        shown.cut(band.length()),
                        shown.mass(band.grams()),
                        ""))
                .toList();
    }

    /** What the designs of some plans of one piece are reckoned to take: as it was told, or what is assumed. */
    String design(List<Plan> plans) {
        List<String> notes =
                plans.stream().map(Plan::piece).map(this::design).distinct().toList();
        boolean told = plans.get(0).piece().design().stripes().told();
        return notes.size() == 1 ? notes.get(0) : phrases.say(told ? "design.class-told" : "design.class");
    }

    private String design(Piece piece) {
        DesignWeft weft = DesignWeft.of(piece);
        List<DesignWeft.Covered> parts = weft.parts();
        if (weft.told()) {
            String told = parts.stream()
                    .map(part -> phrases.say(
                            "design.part",
                            Map.of(
                                    "share", shown.decimals(100 * part.share(), 0),
                                    "yarn", part.yarn().name())))
                    .collect(Collectors.joining(phrases.say("design.comma")));
            return phrases.say("design.told", Map.of("parts", told));
        }
        return phrases.say(
                parts.size() == 1 ? "design.assumed-one" : "design.assumed",
                Map.of(
                        "first", parts.get(0).yarn().name(),
                        "last", parts.get(parts.size() - 1).yarn().name()));
    }

    /** What is in stock needn't be bought; the rest in whole tens of metres or yards. */
    private String buy(YarnTotal total) {
        double stock = total.yarn().stock().map(Length::mm).orElse(0.0);
        double missing = total.length() - stock;
        if (missing <= 0) {
            return phrases.say("yarn.in-stock");
        }
        Optional<Integer> skeins = total.yarn().skeins(missing);
        if (skeins.isPresent()) {
            return skeins(total.yarn(), skeins.get(), stock);
        }
        double step = 10 * (units == UnitSystem.INCHES ? Unit.YARD : Unit.METRE).millimetres();
        String length = shown.total(Decimals.roundedUp(missing, step));
        return stock > 0
                ? phrases.say("yarn.buy-beside", Map.of("length", length, "stock", shown.total(stock)))
                : phrases.say("yarn.buy", Map.of("length", length));
    }

    /** Where it is known how a yarn is sold. */
    private String skeins(Yarn yarn, int count, double stock) {
        Map<String, Object> values = Map.of(
                "count", count,
                "skein", shown.typed(yarn.skein().orElseThrow().text()),
                "stock", shown.total(stock));
        return phrases.say(stock > 0 ? "yarn.buy-skeins-beside" : "yarn.buy-skeins", values);
    }

    private Set<String> uses(YarnTotal total, List<Plan> plans) {
        Set<String> uses = new LinkedHashSet<>();
        if (total.inWarp() > 0) {
            uses.add(phrases.say("use.warp"));
        }
        plans.stream()
                .flatMap(plan -> Stream.of(plan.start(), plan.top()))
                .flatMap(end -> end.taking(total.yarn()).stream())
                .forEach(block -> uses.add(words.name(block).toLowerCase(Locale.ROOT)));
        if (total.inDesign() > 0) {
            uses.add(phrases.say("use.design", Map.of("length", shown.total(total.inDesign()))));
        }
        if (total.sewnOn() > 0) {
            uses.add(phrases.say("use.edge-cord"));
        }
        return uses;
    }
}

package thrumwright.output.html;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;
import thrumwright.output.page.Markup;
import thrumwright.piece.Measures;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.StepMeasure;

/**
 * What the page for a phone asks of what is measured while weaving. It works out only what needs no plan: by how much something
 * differs, and that all heights that follow in the same part move by as much.
 */
record LoomMeasures(Plan plan, Phrases phrases, Html html) {
    /** Filled in by the page. */
    private static final List<String> PLACES =
            List.of("step", "planned", "by", "height", "used", "cut", "typed", "before");

    private static final List<String> SAID = List.of(
            "open",
            "as-planned",
            "over",
            "under",
            "over-last",
            "under-last",
            "reach",
            "wider",
            "narrower",
            "used",
            "tell",
            "unread",
            "below",
            "more");

    /** Attributes of a step: which part it is in, and its height, width and yarn as planned, mm, as far as it has them. */
    String of(String step) {
        StepMeasure planned = StepMeasure.of(plan, step);
        if (planned.reach().isEmpty()) {
            return "";
        }
        String part = Stream.of(Place.values())
                .filter(place -> step.startsWith(place.step("")))
                .map(Place::name)
                .findFirst()
                .orElse(Measures.DESIGN)
                .toLowerCase(Locale.ROOT);
        return attribute("part", part)
                + attribute("reach", mm(planned.reach().get()))
                + attribute("width", mm(plan.piece().warp().clothWidth()))
                + (planned.cut() > 0 ? attribute("cut", mm(planned.cut())) : "");
    }

    /** The fields, of whichever step is at hand. */
    void panel() {
        boolean inches = plan.piece().habits().units() == UnitSystem.INCHES;
        html.raw("<aside id=\"measure\"" + attribute("unit", inches ? "in" : "cm"));
        for (String key : SAID) {
            html.raw(attribute(key, said(key)));
        }
        html.raw(" hidden>\n<details>\n");
        html.line("summary", "");
        for (String field : List.of("height", "width", "left")) {
            html.raw("<label>" + Markup.escaped(phrases.say("measure." + field, Map.of("unit", inches ? "in" : "cm")))
                    + "<input id=\"" + field + "\" inputmode=\"" + (inches ? "text" : "decimal")
                    + "\" autocomplete=\"off\"/></label>\n");
        }
        html.raw("<div aria-live=\"polite\"></div>\n</details>\n</aside>\n");
    }

    private String said(String key) {
        return phrases.say(
                "measure." + key,
                PLACES.stream().collect(Collectors.toMap(place -> place, place -> "{" + place + "}")));
    }

    private static String attribute(String name, String value) {
        return " data-" + name + "=\"" + Markup.escaped(value) + "\"";
    }

    /** To the hundredth, mm. */
    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm);
    }
}

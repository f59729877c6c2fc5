package thrumwright.output.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import thrumwright.measure.Shown;
import thrumwright.output.page.Part;
import thrumwright.piece.Place;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Words;

/** Strips of paper at true size: both ends' blocks, and how deep their hems are. */
public record GaugeStrips(Plan plan, Words words, PartMaker make) {
    /** A strip isn't cut into shorter ones than this, points. */
    private static final double LEAST = 60;

    /**
     * All strips in rows; none where nothing is woven.
     *
     * @param width of a row at most, points, more than 0
     * @param most what a row may take down the page, points, more than 0
     */
    public List<Part> rows(double width, double most) {
        List<Strip> strips = new ArrayList<>();
        ends().forEach(end -> strips.addAll(strips(end, Math.max(LEAST, most - 8))));
        List<Strip> hems = new ArrayList<>();
        ends().forEach(end -> end.hem().filter(Hem::folds).ifPresent(hem -> hems.add(hem(end, hem))));
        if (!hems.isEmpty()) {
            strips.add(new StripStack(List.copyOf(hems)));
        }
        return StripRow.rows(strips, width);
    }

    private Stream<EndPlan> ends() {
        return Stream.of(plan.start(), plan.top());
    }

    private Shown shown() {
        return plan.piece().shown();
    }

    private List<Strip> strips(EndPlan end, double most) {
        String name = make.phrases().say(end.place() == Place.START ? "gauge.start" : "gauge.top");
        List<Strip> strips = new ArrayList<>();
        double from = 0;
        while (end.height() - from > GaugeStrip.HAIR) {
            GaugeStrip strip = new GaugeStrip(name, end, from, from, shown(), words, make).upTo(most);
            strips.add(strip);
            from = strip.to();
        }
        return strips;
    }

    private HemStrip hem(EndPlan end, Hem hem) {
        String key = end.place() == Place.START ? "gauge.hem.start" : "gauge.hem.top";
        String name = make.phrases().say(key, Map.of("depth", shown().height(hem.depth())));
        return new HemStrip(name, hem.depth(), make);
    }
}

package thrumwright.output.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    /** What a strip takes beside its own length, points. */
    private static final double AROUND = 24;

    /** Hems that differ by less are equally deep, mm. */
    private static final double SAME = 0.1;

    /**
     * All strips in rows; none where nothing is woven, nor for a hem that is deeper than any page is long.
     *
     * @param width of a row at most, points, more than 0
     * @param most what a row may take down the page, points, more than 0
     * @param page what a row may take down a page that has nothing else, points, at least as much
     */
    public List<Part> rows(double width, double most, double page) {
        List<PaperStrip> strips = new ArrayList<>();
        ends().forEach(end -> strips.addAll(strips(end, Math.max(LEAST, most - 8))));
        Optional<PaperStrip> hems = hems(Math.max(page, width) - AROUND).map(strip -> fitted(strip, width, most));
        hems.filter(strip -> fits(strip, most)).ifPresent(strips::add);
        List<Part> rows = StripRow.rows(strips, width);
        hems.filter(strip -> !fits(strip, most)).ifPresent(strip -> rows.add(StripRow.of(strip)));
        return rows;
    }

    private static boolean fits(PaperStrip strip, double most) {
        return StripRow.of(strip).height(strip.width()) <= most;
    }

    /** On its side, if it is too long to stand and not too long to lie. */
    private static PaperStrip fitted(PaperStrip strip, double width, double most) {
        PaperStrip lying = new LyingStrip(strip);
        return fits(strip, most) || lying.width() > width ? strip : lying;
    }

    private Stream<EndPlan> ends() {
        return Stream.of(plan.start(), plan.top());
    }

    private Shown shown() {
        return plan.piece().shown();
    }

    private List<PaperStrip> strips(EndPlan end, double most) {
        String name = make.phrases().say(end.place() == Place.START ? "gauge.start" : "gauge.top");
        List<PaperStrip> strips = new ArrayList<>();
        double from = 0;
        while (end.height() - from > GaugeStrip.HAIR) {
            GaugeStrip strip = new GaugeStrip(name, end, from, from, shown(), words, make).upTo(most);
            strips.add(strip);
            from = strip.to();
        }
        return strips;
    }

    /** Both in one where they are equal, or differ by enough for their names; only such as are no deeper than so many points. */
    private Optional<PaperStrip> hems(double deepest) {
        List<HemStrip.Depth> depths = new ArrayList<>();
        ends().forEach(end -> end.hem().filter(Hem::folds).ifPresent(hem -> depths.add(depth(end, hem))));
        depths.removeIf(depth -> depth.points() > deepest);
        depths.sort(Comparator.comparingDouble(HemStrip.Depth::mm).reversed());
        if (depths.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(depths.size() == 2 ? two(depths) : new HemStrip(List.copyOf(depths), make));
    }

    /** @param depths the deeper first */
    private PaperStrip two(List<HemStrip.Depth> depths) {
        double deepest = depths.get(0).mm();
        double more = deepest - depths.get(1).mm();
        if (more < SAME) {
            return new HemStrip(List.of(new HemStrip.Depth(name("both", deepest), deepest)), make);
        } else if (more >= HemStrip.APART) {
            return new HemStrip(List.copyOf(depths), make);
        }
        return new StripStack(depths.stream()
                .<PaperStrip>map(depth -> new HemStrip(List.of(depth), make))
                .toList());
    }

    private HemStrip.Depth depth(EndPlan end, Hem hem) {
        return new HemStrip.Depth(name(end.place() == Place.START ? "start" : "top", hem.depth()), hem.depth());
    }

    private String name(String which, double depth) {
        return make.phrases().say("gauge.hem." + which, Map.of("depth", shown().height(depth)));
    }
}

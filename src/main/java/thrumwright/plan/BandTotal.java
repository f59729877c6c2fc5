package thrumwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much band of one width and thickness the hems of one or more pieces are faced with.
 *
 * @param width mm
 * @param thickness mm
 * @param length as cut, mm
 * @param grams of all of it
 */
public record BandTotal(double width, double thickness, double length, double grams) {
    /** For all those pieces, each sort once, in the order in which they are met. */
    public static List<BandTotal> of(List<Plan> plans) {
        List<BandTotal> totals = new ArrayList<>();
        plans.stream()
                .flatMap(plan -> Stream.of(plan.start(), plan.top()))
                .flatMap(end -> end.hem().stream())
                .flatMap(hem -> hem.band().stream())
                .forEach(band -> add(totals, band));
        return totals;
    }

    private static void add(List<BandTotal> totals, SewnBand band) {
        for (int i = 0; i < totals.size(); i++) {
            BandTotal total = totals.get(i);
            if (total.is(band)) {
                totals.set(
                        i,
                        new BandTotal(
                                total.width,
                                total.thickness,
                                total.length + band.length(),
                                total.grams + band.grams()));
                return;
            }
        }
        totals.add(new BandTotal(band.width(), band.thickness(), band.length(), band.grams()));
    }

    private boolean is(SewnBand band) {
        return width == band.width() && thickness == band.thickness();
    }
}

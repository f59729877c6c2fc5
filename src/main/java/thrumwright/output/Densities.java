package thrumwright.output;

import java.util.List;
import java.util.function.Function;
import thrumwright.drawing.Fonts;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Type;

/** What is read from close by is set somewhat denser where that saves enough pages. */
final class Densities {
    /** Room for the line at the foot of every page, points. */
    static final double FOOTER = 18;
    /** Sizes to try, the best to read first. */
    private static final List<Double> ALL = List.of(1.0, 0.95, 0.9, 0.85, 0.8, 0.76);

    private Densities() {}

    /** Of several ways to lay something out, the one that costs least, and of equals the best to read. */
    static SheetPages best(PageSetup setup, Fonts fonts, Function<Type, SheetPages> laidOut) {
        SheetPages best = null;
        double least = Double.MAX_VALUE;
        for (double density : ALL) {
            SheetPages pages = laidOut.apply(new Type(fonts, setup.distance(), density));
            double cost = cost(pages, density);
            if (cost < least) {
                best = pages;
                least = cost;
            }
            if (pages.count() == 1) {
                break;
            }
        }
        return best;
    }

    /** Whether one way saves at least a page of another, or leaves fewer half empty. */
    static boolean saves(SheetPages one, SheetPages other) {
        return cost(one, 1) < cost(other, 1);
    }

    /** Pages, those with hardly anything on them, and those that are half empty before the end, thrice; of equals the best to read. */
    private static double cost(SheetPages pages, double density) {
        return pages.count() + 2 * pages.nearlyEmpty() + 2 * pages.halfEmpty() + (1 - density);
    }
}

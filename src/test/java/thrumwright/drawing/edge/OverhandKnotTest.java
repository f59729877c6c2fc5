package thrumwright.drawing.edge;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawn knot is an overhand knot: it crosses itself three times, and its way goes under and over by turns. */
class OverhandKnotTest {
    /** A place where the way crosses itself. */
    private record Pass(double along, int crossing, boolean over) {}

    private static List<Pass> passes(List<double[]> line) {
        List<Pass> passes = new ArrayList<>();
        int crossings = 0;
        for (int i = 0; i < line.size() - 1; i++) {
            for (int j = i + 2; j < line.size() - 1; j++) {
                // at a point of the line it would be met twice
                boolean met = crosses(line, i, j) && !crosses(line, i, j - 1) && !crosses(line, i - 1, j);
                if (met) {
                    boolean first = line.get(i)[2] > line.get(j)[2];
                    passes.add(new Pass(i, crossings, first));
                    passes.add(new Pass(j, crossings, !first));
                    crossings++;
                }
            }
        }
        passes.sort(Comparator.comparingDouble(Pass::along));
        return passes;
    }

    private static boolean crosses(List<double[]> line, int i, int j) {
        if (i < 0) {
            return false;
        }
        double[] a = line.get(i);
        double[] b = line.get(i + 1);
        double[] c = line.get(j);
        double[] d = line.get(j + 1);
        return Line2D.linesIntersect(a[0], a[1], b[0], b[1], c[0], c[1], d[0], d[1]);
    }

    /** Three crossings met in the order 1 2 3 1 2 3, each time on the other side: the trefoil, the only such knot. */
    @Test
    void itsWayIsTheTrefoil() {
        List<Pass> passes = passes(new OverhandKnot(0, 0, 10, 1, 1).line(-20, 40, OverhandKnot.THROUGH));

        assertThat(passes).extracting(Pass::crossing).containsExactly(0, 1, 2, 0, 1, 2);
        for (int i = 1; i < passes.size(); i++) {
            assertThat(passes.get(i).over()).isNotEqualTo(passes.get(i - 1).over());
        }
    }

    /** Where only the loop is laid, the way crosses itself once, the later part on top. */
    @Test
    void theLoopLiesAcrossItself() {
        List<Pass> passes = passes(new OverhandKnot(0, 0, 10, 1, 1).line(-20, Double.NaN, OverhandKnot.LOOPED));

        assertThat(passes).extracting(Pass::over).containsExactly(false, true);
    }
}

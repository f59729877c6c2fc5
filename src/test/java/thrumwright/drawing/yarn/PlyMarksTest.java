package thrumwright.drawing.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.View;

class PlyMarksTest {
    private static final double THICK = 2;

    /** A tail as long as hundreds of marks, of which a window shows a few: from x = 100 to 120, drawn in tenfold size. */
    private static final Rectangle2D WINDOW = new Rectangle2D.Double(1000, -100, 200, 200);

    private static final Spine LONG =
            Spine.of(new View(10, 0, 0), Stretch.loose(new double[] {0, 250, 500}, new double[] {0, 0.5, 0}, THICK));

    /** Where the marks of each colour begin. */
    private static List<List<Point2D>> marks(int colours, Optional<Rectangle2D> visible) {
        PlyMarks marks = new PlyMarks(
                Stream.<Path2D>generate(Path2D.Double::new).limit(colours).toList(), PlyMarks.REACH, visible);
        marks.add(LONG, 2, 1);
        return marks.strokes().stream().map(PlyMarksTest::beginnings).toList();
    }

    private static List<Point2D> beginnings(Path2D path) {
        List<Point2D> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            if (i.currentSegment(at) == PathIterator.SEG_MOVETO) {
                points.add(new Point2D.Double(at[0], at[1]));
            }
        }
        return points;
    }

    @Test
    void onlyThoseAreMadeThatMayBeSeen() {
        double apart = 10 * PlyMarks.apart(THICK, 2);
        assertThat(marks(1, Optional.empty()).get(0)).hasSizeGreaterThan(300);
        assertThat(marks(1, Optional.of(WINDOW)).get(0))
                .hasSizeBetween((int) (WINDOW.getWidth() / apart), (int) (WINDOW.getWidth() / apart) + 4);
        assertThat(marks(1, Optional.of(new Rectangle2D.Double(1000, 100, 200, 200)))
                        .get(0))
                .isEmpty();
    }

    /** Whatever is seen, each mark lies where it lay and has the colour that it had. */
    @Test
    void thoseThatAreSeenAreTheVerySame() {
        List<List<Point2D>> all = marks(3, Optional.empty());
        List<List<Point2D>> seen = marks(3, Optional.of(WINDOW));
        for (int colour = 0; colour < 3; colour++) {
            assertThat(seen.get(colour))
                    .isSubsetOf(all.get(colour))
                    .containsAll(
                            all.get(colour).stream().filter(WINDOW::contains).toList())
                    .isNotEmpty();
        }
    }
}

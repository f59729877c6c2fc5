package thrumwright.output.card;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thrumwright.measure.Phrases;
import thrumwright.sheet.card.CardRow;

/** Finds a place for all that a row says. */
record RowSetter(CardRow row, double width, CardStyle style, Phrases phrases) {
    private static final double GAP = 3;
    /** How far the accent of a capital stands out, times the type. */
    private static final double ACCENT = 0.12;
    /** A box beside large type is at least so large, times the type. */
    private static final double LEAST_BOX = 0.36;
    /** Boxes in several lines are counted by tens. */
    private static final int TENS = 10;
    /** Boxes below large words take so much of their width, if small print stands beside them. */
    private static final double BESIDE = 0.42;

    private SmallPrint print() {
        return new SmallPrint(row.cut(), style.form().bare() ? List.of() : row.notes(), style);
    }

    /** The whole row, in the lines that its form wants. */
    RowFace set() {
        RowFace two = set(words().twoOrMore());
        if (style.form().lines() != CardForm.Lines.ONE) {
            return two;
        }
        RowFace one = set(words().one());
        return one.height() <= two.height() ? one : two;
    }

    private RowWords words() {
        return new RowWords(row, width, style);
    }

    private RowFace set(LargeLines large) {
        RowFace face = style.form().roomy() ? below(large) : beside(large);
        return words().accented() ? face.lowered(ACCENT * style.large()) : face;
    }

    private double box() {
        return Math.max(TickGrid.LEAST, style.large() * (style.form().roomy() ? 0.56 : 0.42));
    }

    private Optional<TickGrid> grid(double wide, double high, double box) {
        return row.ticks() == 0 ? Optional.empty() : Optional.of(TickGrid.within(row.ticks(), wide, high, box));
    }

    /** Boxes below the large words, and small print below the boxes. */
    private RowFace below(LargeLines large) {
        Optional<TickGrid> grid = grid(width, 3.5 * box(), box());
        double y = large.height() + (grid.isPresent() ? GAP : 0);
        double high = grid.map(TickGrid::height).orElse(0.0);
        Rectangle2D ticks = new Rectangle2D.Double(0, y, width, high);
        return printed(large, grid, ticks, new Rectangle2D.Double(0, y + high + GAP, width, 0));
    }

    /** Where one box stands for several rows, that is said. */
    private SmallPrint labelled(Optional<TickGrid> grid) {
        SmallPrint print = print();
        if (grid.filter(boxes -> boxes.each() > 1).isEmpty()) {
            return print;
        }
        String key = row.block().work().orElseThrow().block().plainWeave() ? "box.picks" : "box";
        List<String> notes = new ArrayList<>(print.notes());
        notes.add(0, phrases.say(key, Map.of("count", grid.get().each())));
        return new SmallPrint(print.cut(), notes, style);
    }

    /** Boxes and small print in the gaps of the large lines, boxes rather beside the last; what finds no gap stands below. */
    private RowFace beside(LargeLines large) {
        List<Rectangle2D> gaps = new ArrayList<>(large.gaps());
        Optional<InGap> found = inGap(gaps);
        Optional<TickGrid> grid = found.map(InGap::grid);
        Rectangle2D ticks = found.map(one -> one.place(gaps)).orElseGet(Rectangle2D.Double::new);
        found.ifPresent(one -> gaps.set(one.gap(), after(gaps.get(one.gap()), ticks.getMaxX() + 8)));
        SmallPrint print = labelled(grid);
        boolean ticked = grid.isPresent() || row.ticks() == 0;
        return gaps.stream()
                .filter(gap -> ticked && print.fits(gap.getWidth(), style.line()))
                .findFirst()
                .map(gap -> middle(gap, gap.getWidth(), print.height(gap.getWidth())))
                .map(text -> new RowFace(row, large, grid, ticks, print, text, 0, large.height()))
                .orElseGet(() -> strip(large, grid, ticks, large.height()));
    }

    private static Rectangle2D middle(Rectangle2D gap, double width, double height) {
        return new Rectangle2D.Double(gap.getX(), gap.getCenterY() - height / 2 + 1, width, height);
    }

    private static Rectangle2D after(Rectangle2D gap, double x) {
        return new Rectangle2D.Double(x, gap.getY(), Math.max(0, gap.getMaxX() - x), gap.getHeight());
    }

    /** Boxes that find room in a gap. */
    private record InGap(int gap, TickGrid grid) {
        Rectangle2D place(List<Rectangle2D> gaps) {
            return middle(gaps.get(gap), grid.width(), grid.height());
        }
    }

    /** All boxes in one line, if there is a gap for that; as large as they may be; rather in the last gap. */
    private Optional<InGap> inGap(List<Rectangle2D> gaps) {
        List<InGap> found = new ArrayList<>();
        for (int i = gaps.size() - 1; i >= 0 && row.ticks() > 0; i--) {
            int gap = i;
            fitting(gaps.get(i)).forEach(grid -> found.add(new InGap(gap, grid)));
        }
        return found.stream()
                .min(Comparator.comparing((InGap one) -> one.grid().lines())
                        .thenComparing(one -> -one.grid().box()));
    }

    private Stream<TickGrid> fitting(Rectangle2D gap) {
        double high = style.line() - 2;
        return Stream.of(0.58, 0.5, 0.42, LEAST_BOX)
                .map(share -> Math.max(TickGrid.LEAST, share * style.large()))
                .map(box -> TickGrid.within(row.ticks(), gap.getWidth(), high, box))
                .filter(grid -> grid.each() == 1 && grid.fits(gap.getWidth(), high))
                .filter(grid -> grid.lines() == 1 || grid.columns() >= TENS);
    }

    /** A strip below the large lines: boxes, unless they have their place, and small print beside or below them. */
    private RowFace strip(LargeLines large, Optional<TickGrid> placed, Rectangle2D ticks, double y) {
        if (placed.isPresent() || row.ticks() == 0) {
            return printed(large, placed, ticks, new Rectangle2D.Double(0, y, width, 0));
        }
        double box = Math.max(TickGrid.LEAST, 0.3 * style.large());
        Optional<TickGrid> narrow = grid(width * BESIDE, 2.3 * box, box).filter(grid -> grid.each() == 1);
        TickGrid grid = narrow.or(() -> grid(width, 3.5 * box, box)).orElseThrow();
        Rectangle2D boxes = new Rectangle2D.Double(0, y + 1, grid.width(), grid.height());
        double left = narrow.isPresent() ? grid.width() + 8 : 0;
        double top = narrow.isPresent() ? y : boxes.getMaxY() + 2;
        return printed(large, Optional.of(grid), boxes, new Rectangle2D.Double(left, top, width - left, 0));
    }

    private RowFace printed(LargeLines large, Optional<TickGrid> grid, Rectangle2D ticks, Rectangle2D from) {
        SmallPrint print = labelled(grid);
        Rectangle2D text =
                new Rectangle2D.Double(from.getX(), from.getY(), from.getWidth(), print.height(from.getWidth()));
        double bottom = Math.max(large.height(), Math.max(text.getMaxY(), ticks.getMaxY() + 1));
        return new RowFace(row, large, grid, ticks, print, text, 0, bottom);
    }
}

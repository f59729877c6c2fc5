package thrumwright.output.card;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.measure.Phrases;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardWay;

/**
 * The words of a row, set: large ones in lines, boxes to tick and small print beside or below them.
 *
 * @param ticks where the boxes lie, if there are any
 * @param small where the small print lies
 * @param top free above all of it, points
 */
record RowFace(
        CardRow row,
        LargeLines large,
        Optional<TickGrid> grid,
        Rectangle2D ticks,
        SmallPrint print,
        Rectangle2D small,
        double top,
        double height) {
    private static final double GAP = 3;
    private static final int NAME_LINES = 3;
    /** How far the accent of a capital stands out, times the type. */
    private static final double ACCENT = 0.12;
    /** A box beside large type is at least so large, times the type. */
    private static final double LEAST_BOX = 0.36;
    /** Boxes in several lines are counted by tens. */
    private static final int TENS = 10;
    /** Boxes below large words take so much of their width, if small print stands beside them. */
    private static final double BESIDE = 0.42;
    /** Small print in narrower gaps would be torn to pieces, points. */
    private static final double LEAST_PRINT = 70;

    /** Sets a row in so many points of width. */
    static RowFace of(CardRow row, double width, CardStyle style, Phrases phrases) {
        Setter setter = new Setter(row, width, style, phrases);
        RowFace two = setter.set(setter.twoOrMore());
        if (style.form().lines() != CardForm.Lines.ONE) {
            return two;
        }
        RowFace one = setter.set(setter.one());
        return one.height() <= two.height() ? one : two;
    }

    /** With so many points free above it. */
    private RowFace lowered(double by) {
        return new RowFace(row, large, grid, ticks, print, small, top + by, height + by);
    }

    /** Its name alone, which is heard as a heading with the number. */
    void paintName(Graphics2D g, double x, double y, CardStyle style) {
        g.setColor(style.palette().ink());
        large.each((word, left, baseline) -> {
            if (word.says().isEmpty()) {
                word.paint(g, x + left, y + top + baseline);
            }
        });
    }

    /** All but its name. */
    void paint(Graphics2D g, double x, double y, CardStyle style) {
        large.each((word, left, baseline) -> {
            if (!word.says().isEmpty()) {
                g.setColor(style.palette().ink());
                LargeWord.item(g, word.says(), () -> word.paint(g, x + left, y + top + baseline));
            }
        });
        grid.ifPresent(boxes -> boxes.paint(g, x + ticks.getX(), y + top + ticks.getY(), style.palette()));
        print.paint(g, x + small.getX(), y + top + small.getY(), small.getWidth());
    }

    /** Finds a place for all that a row says. */
    private record Setter(CardRow row, double width, CardStyle style, Phrases phrases) {
        private LargeWord word(String text, String says) {
            return LargeWord.of(text, style.word(), says, style);
        }

        /** A long name takes some lines and no more; the sheet has all of it. */
        private List<LargeWord> name() {
            List<LargeWord> lines =
                    LargeWord.of(row.name(), style.name(), "", style).broken(width, style);
            int most = style.form().bare() ? 1 : NAME_LINES;
            if (lines.size() <= most) {
                return lines;
            }
            String last = style.widths().shortened(lines.get(most - 1).text() + " …", style.name(), width);
            List<LargeWord> shown = new ArrayList<>(lines.subList(0, most - 1));
            shown.add(LargeWord.of(last, style.name(), "", style));
            return shown;
        }

        private Optional<LargeWord> reach() {
            return row.reach().map(reach -> word(reach.shown(), reach.says()).atEnd());
        }

        private Optional<LargeWord> count() {
            return row.count().map(count -> word(count.shown(), count.says()));
        }

        /** The first row; what is heard is the second too. */
        private List<LargeWord> ways() {
            String all = row.ways().stream().map(CardWay::says).collect(Collectors.joining(". "));
            return row.ways().stream()
                    .limit(row.twoWays() ? 2 : 1)
                    .map(way -> word(way.arrow() + " " + way.brief(), row.twoWays() ? way.says() : all))
                    .toList();
        }

        private List<LargeWord> work() {
            List<LargeWord> words = new ArrayList<>();
            row.large().forEach(text -> words.add(word(text, text)));
            words.addAll(ways());
            count().ifPresent(words::add);
            return words;
        }

        LargeLines one() {
            List<LargeWord> words = new ArrayList<>(name());
            words.addAll(work());
            reach().ifPresent(words::add);
            return LargeLines.of(words, width, style);
        }

        /** The name, with the height at the end of its line if that fits; below it how it is worked. */
        LargeLines twoOrMore() {
            List<LargeWord> first = new ArrayList<>(name());
            List<LargeWord> second = new ArrayList<>(work());
            LargeLines name = LargeLines.of(first, width, style);
            if (reach().isPresent()) {
                first.add(reach().get());
                LargeLines both = LargeLines.of(first, width, style);
                if (both.lines().size() == name.lines().size()) {
                    name = both;
                } else {
                    second.add(reach().get());
                }
            }
            return name.and(LargeLines.of(second, width, style));
        }

        private SmallPrint print() {
            return new SmallPrint(row.cut(), style.form().bare() ? List.of() : row.notes(), style);
        }

        RowFace set(LargeLines large) {
            RowFace face = style.form().roomy() ? below(large) : beside(large);
            return accented() ? face.lowered(ACCENT * style.large()) : face;
        }

        /** Whether a capital of the name has an accent, which stands out of its line. */
        private boolean accented() {
            return row.name()
                    .codePoints()
                    .filter(Character::isUpperCase)
                    .anyMatch(letter -> Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFD)
                                    .length()
                            > 1);
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
            Rectangle2D ticks = new Rectangle2D.Double(
                    0, y, width, grid.map(TickGrid::height).orElse(0.0));
            SmallPrint print = labelled(grid);
            double small = ticks.getMaxY() + GAP;
            Rectangle2D text = new Rectangle2D.Double(0, small, width, print.height(width));
            return new RowFace(row, large, grid, ticks, print, text, 0, text.getMaxY());
        }

        /** Where one box stands for several rows, that is said. */
        private SmallPrint labelled(Optional<TickGrid> grid) {
            SmallPrint print = print();
            if (grid.filter(boxes -> boxes.each() > 1).isEmpty()) {
                return print;
            }
            boolean picks = row.block().work().orElseThrow().block().plainWeave();
            List<String> notes = new ArrayList<>(print.notes());
            notes.add(
                    0,
                    phrases.say(
                            picks ? "box.picks" : "box",
                            Map.of("count", grid.get().each())));
            return new SmallPrint(print.cut(), notes, style);
        }

        /** Boxes and small print in the gaps of the large lines, boxes rather beside the last; what finds no gap stands below. */
        private RowFace beside(LargeLines large) {
            List<Rectangle2D> gaps = new ArrayList<>(large.gaps());
            Optional<TickGrid> grid = Optional.empty();
            Rectangle2D ticks = new Rectangle2D.Double();
            Optional<InGap> found = inGap(gaps);
            if (found.isPresent()) {
                grid = Optional.of(found.get().grid());
                Rectangle2D gap = gaps.get(found.get().gap());
                ticks = middle(gap, grid.get().width(), grid.get().height());
                gaps.set(found.get().gap(), after(gap, ticks.getMaxX() + 8));
            }
            SmallPrint print = labelled(grid);
            boolean ticked = grid.isPresent() || row.ticks() == 0;
            Optional<Rectangle2D> text = gaps.stream()
                    .filter(gap -> ticked && gap.getWidth() > LEAST_PRINT)
                    .filter(gap -> print.height(gap.getWidth()) < style.line())
                    .findFirst()
                    .map(gap -> middle(gap, gap.getWidth(), print.height(gap.getWidth())));
            return text.isPresent()
                    ? new RowFace(row, large, grid, ticks, print, text.get(), 0, large.height())
                    : strip(large, grid, ticks, large.height());
        }

        private static Rectangle2D middle(Rectangle2D gap, double width, double height) {
            return new Rectangle2D.Double(gap.getX(), gap.getCenterY() - height / 2 + 1, width, height);
        }

        private static Rectangle2D after(Rectangle2D gap, double x) {
            return new Rectangle2D.Double(x, gap.getY(), Math.max(0, gap.getMaxX() - x), gap.getHeight());
        }

        /** Boxes that find room in a gap. */
        private record InGap(int gap, TickGrid grid) {}

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
}

package thrumwright.output.card;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.sheet.card.CardRow;
import thrumwright.sheet.card.CardWay;

/**
 * The words of a row, set: large ones in lines, boxes to tick and small print beside or below them.
 *
 * @param ticks where the boxes lie, if there are any
 * @param print where the small print lies
 */
record RowFace(
        CardRow row,
        LargeLines large,
        Optional<TickGrid> grid,
        Rectangle2D ticks,
        SmallPrint print,
        Rectangle2D small,
        double height) {
    private static final double GAP = 3;

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

    /** Its name alone, which is heard as a heading with the number. */
    void paintName(Graphics2D g, double x, double y, CardStyle style) {
        g.setColor(style.palette().ink());
        large.each((word, left, baseline) -> {
            if (word.says().isEmpty()) {
                word.paint(g, x + left, y + baseline);
            }
        });
    }

    /** All but its name. */
    void paint(Graphics2D g, double x, double y, CardStyle style) {
        large.each((word, left, baseline) -> {
            if (!word.says().isEmpty()) {
                g.setColor(style.palette().ink());
                LargeWord.item(g, word.says(), () -> word.paint(g, x + left, y + baseline));
            }
        });
        grid.ifPresent(boxes -> boxes.paint(g, x + ticks.getX(), y + ticks.getY(), style.palette()));
        print.paint(g, x + small.getX(), y + small.getY(), small.getWidth());
    }

    /** Finds a place for all that a row says. */
    private record Setter(CardRow row, double width, CardStyle style, Phrases phrases) {
        private LargeWord word(String text, String says, boolean right) {
            return new LargeWord(text, style.word(), says, right);
        }

        private List<LargeWord> name() {
            return new LargeWord(row.name(), style.name(), "", false).broken(width);
        }

        private Optional<LargeWord> reach() {
            return row.reach().map(reach -> word(reach.shown(), reach.says(), true));
        }

        private Optional<LargeWord> count(boolean right) {
            return row.count().map(count -> word(count.shown(), count.says(), right));
        }

        /** Rows that differ in their side only are told as one. */
        private List<LargeWord> ways() {
            List<CardWay> ways = row.ways();
            if (ways.size() == 2 && ways.get(0).brief().equals(ways.get(1).brief())) {
                String arrows = ways.get(0).arrow() + " " + ways.get(1).arrow() + " ";
                String says = ways.get(0).says() + ". " + ways.get(1).says();
                return List.of(word(arrows + ways.get(0).brief(), says, false));
            }
            return ways.stream()
                    .map(way -> word(way.arrow() + " " + way.brief(), way.says(), false))
                    .toList();
        }

        private List<LargeWord> work(boolean countRight) {
            List<LargeWord> words = new ArrayList<>();
            row.large().forEach(text -> words.add(word(text, text, false)));
            words.addAll(ways());
            count(countRight).ifPresent(words::add);
            return words;
        }

        LargeLines one() {
            List<LargeWord> words = new ArrayList<>(name());
            words.addAll(work(false));
            reach().ifPresent(words::add);
            return LargeLines.of(words, width, style);
        }

        /** The name, with the height at the end of its line if that fits; below it how it is worked. */
        LargeLines twoOrMore() {
            List<LargeWord> first = new ArrayList<>(name());
            List<LargeWord> second = new ArrayList<>(work(style.form().roomy()));
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
            List<String> notes = new ArrayList<>(row.notes());
            return new SmallPrint(row.cut(), notes, style);
        }

        RowFace set(LargeLines large) {
            return style.form().roomy() ? below(large) : beside(large);
        }

        private double box() {
            return Math.max(TickGrid.LEAST, style.large() * (style.form().roomy() ? 0.56 : 0.42));
        }

        private Optional<TickGrid> grid(double wide, double high, double box) {
            return row.ticks() == 0 ? Optional.empty() : Optional.of(TickGrid.within(row.ticks(), wide, high, box));
        }

        /** Boxes below the large words, and small print below the boxes. */
        private RowFace below(LargeLines large) {
            Optional<TickGrid> grid = grid(width, 2.5 * box(), box());
            double y = large.height() + (grid.isPresent() ? GAP : 0);
            Rectangle2D ticks = new Rectangle2D.Double(
                    0, y, width, grid.map(TickGrid::height).orElse(0.0));
            SmallPrint print = labelled(grid);
            double small = ticks.getMaxY() + GAP;
            Rectangle2D text = new Rectangle2D.Double(0, small, width, print.height(width));
            return new RowFace(row, large, grid, ticks, print, text, text.getMaxY());
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
                            java.util.Map.of("count", grid.get().each())));
            return new SmallPrint(print.cut(), notes, style);
        }

        /** Boxes and small print in the gaps of the large lines; what finds no gap stands below. */
        private RowFace beside(LargeLines large) {
            List<Rectangle2D> gaps = new ArrayList<>(large.gaps());
            double high = style.line() - 2;
            Optional<TickGrid> grid = Optional.empty();
            Rectangle2D ticks = new Rectangle2D.Double();
            double bottom = large.height();
            for (int i = 0; i < gaps.size() && row.ticks() > 0 && grid.isEmpty(); i++) {
                Rectangle2D gap = gaps.get(i);
                Optional<TickGrid> tried = fitting(gap.getWidth(), high);
                if (tried.isPresent()) {
                    grid = tried;
                    double y = gap.getY() + (style.line() - tried.get().height()) / 2 + 1;
                    ticks = new Rectangle2D.Double(
                            gap.getX(), y, tried.get().width(), tried.get().height());
                    gaps.set(
                            i,
                            new Rectangle2D.Double(
                                    ticks.getMaxX() + 8,
                                    gap.getY(),
                                    gap.getMaxX() - ticks.getMaxX() - 8,
                                    gap.getHeight()));
                }
            }
            SmallPrint print = labelled(grid);
            for (Rectangle2D gap : gaps) {
                if (grid.isPresent() == row.ticks() > 0
                        && gap.getWidth() > 60
                        && print.height(gap.getWidth()) <= high + 1) {
                    double y = gap.getY() + (style.line() - print.height(gap.getWidth())) / 2 + 1;
                    Rectangle2D text =
                            new Rectangle2D.Double(gap.getX(), y, gap.getWidth(), print.height(gap.getWidth()));
                    return new RowFace(row, large, grid, ticks, print, text, bottom);
                }
            }
            return strip(large, grid, ticks, bottom);
        }

        private Optional<TickGrid> fitting(double wide, double high) {
            for (double box : new double[] {Math.min(box(), high), TickGrid.LEAST}) {
                TickGrid grid = TickGrid.within(row.ticks(), wide, high, box);
                if (grid.each() == (row.ticks() > 40 ? grid.each() : 1) && grid.fits(wide, high)) {
                    return Optional.of(grid);
                }
            }
            return Optional.empty();
        }

        /** A strip below the large lines: boxes, unless they have their place, and small print beside them. */
        private RowFace strip(LargeLines large, Optional<TickGrid> placed, Rectangle2D ticks, double y) {
            Optional<TickGrid> grid =
                    placed.isPresent() ? placed : grid(width * 0.4, 2.2 * TickGrid.LEAST, TickGrid.LEAST);
            boolean here = placed.isEmpty() && grid.isPresent();
            SmallPrint print = labelled(grid);
            double left = here ? grid.get().width() + 8 : 0;
            double height = print.height(width - left);
            Rectangle2D boxes = here
                    ? new Rectangle2D.Double(
                            0, y + 1, grid.get().width(), grid.get().height())
                    : ticks;
            Rectangle2D text = new Rectangle2D.Double(left, y, width - left, height);
            double bottom = Math.max(text.getMaxY(), here ? boxes.getMaxY() + 1 : 0);
            return new RowFace(row, large, grid, boxes, print, text, bottom);
        }
    }
}

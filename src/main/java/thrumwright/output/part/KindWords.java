package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.List;
import thrumwright.output.page.Part;

/**
 * What to do in one kind of block and what to take care of, with right and wrong beside it where its pictures leave them to the words.
 *
 * @param words one below the other
 */
public record KindWords(KindPictures pictures, List<Part> words) implements Part {
    private static final double BETWEEN = 2;
    private static final double BESIDE = 12;

    public KindWords {
        words = List.copyOf(words);
    }

    /** So many of the words, from the first: 0 or more, and no more than there are. */
    public KindWords first(int many) {
        return new KindWords(pictures, words.subList(0, many));
    }

    /** How many of the words, from the first, stand beside right and wrong without reaching below them: 0 or more, for a width in points, more than 0. */
    public int besideSlips(double width) {
        int many = 0;
        double slips = first(0).height(width);
        while (many < words.size() && first(many + 1).height(width) <= slips) {
            many++;
        }
        return many;
    }

    private double wordsWidth(double width) {
        return pictures.slipsBeside() ? width - pictures.slipWidth(width) - BESIDE : width;
    }

    @Override
    public double height(double width) {
        double wide = wordsWidth(width);
        double high =
                words.stream().mapToDouble(part -> part.height(wide) + BETWEEN).sum();
        return pictures.slipsBeside() ? Math.max(high, pictures.slipsHeight(pictures.slipWidth(width))) : high;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        double wide = wordsWidth(width);
        if (pictures.slipsBeside()) {
            pictures.paintSlips(g, x + wide + BESIDE, y, pictures.slipWidth(width));
        }
        double at = y;
        for (Part part : words) {
            part.paint(g, x, at, wide);
            at += part.height(wide) + BETWEEN;
        }
    }
}

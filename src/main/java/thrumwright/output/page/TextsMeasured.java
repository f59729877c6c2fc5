package thrumwright.output.page;

import java.awt.Font;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was measured lately, which follows from text and font alone: a page's parts are asked for their heights many times
 * before one way to lay it out is chosen, and the sheets of a class say the same again and again.
 */
final class TextsMeasured {
    private static final float UNIT = 1000;

    private static final Map<Asked, List<String>> LINES = Collections.synchronizedMap(new Latest<>(4000));
    private static final Map<Word, Double> WORDS = Collections.synchronizedMap(new Latest<>(8000));

    private TextsMeasured() {}

    /**
     * What a text's lines follow from. Equality is spelt out: it is asked for with every word, and what a record has by itself is
     * slower at it.
     */
    private record Asked(String text, Font font, double width) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Asked asked
                    && width == asked.width
                    && text.equals(asked.text)
                    && font.equals(asked.font);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * text.hashCode() + font.hashCode()) + Double.hashCode(width);
        }
    }

    /** The name that a font was made by is at hand; asking the font file for its own takes longer than all else. */
    private record Word(String text, String font, int style) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Word word
                    && style == word.style
                    && text.equals(word.text)
                    && font.equals(word.font);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * text.hashCode() + font.hashCode()) + style;
        }
    }

    /** Forgets what was asked first. */
    private static final class Latest<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1L;

        private final int most;

        Latest(int most) {
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }

    /** A text's lines in so many points of width. */
    static List<String> lines(String text, Font font, double width, Supplier<List<String>> broken) {
        return LINES.computeIfAbsent(new Asked(text, font, width), asked -> List.copyOf(broken.get()));
    }

    /** How wide a word is: points, 0 or more. */
    static double word(String word, Font font) {
        double wide = WORDS.computeIfAbsent(
                new Word(word, font.getName(), font.getStyle()), asked -> TextPart.width(word, font.deriveFont(UNIT)));
        return wide * font.getSize2D() / UNIT;
    }
}

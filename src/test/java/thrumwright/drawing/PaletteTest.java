package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thrumwright.yarn.Colour;

class PaletteTest {
    /** Red, green and blue of one lightness: as plain greys nobody could tell them apart. */
    private static final List<Colour> ALIKE = List.of(new Colour(0xb4502c), new Colour(0x2f8a3c), new Colour(0x5b74a8));

    @Test
    void inBlackAndWhiteYarnsOfDifferentColourAreDifferentGreys() {
        Palette palette = Palette.blackAndWhite(ALIKE);
        List<Integer> levels = new ArrayList<>();
        for (Colour colour : ALIKE) {
            Color grey = palette.yarn(colour);
            assertThat(grey.getRed()).isEqualTo(grey.getGreen()).isEqualTo(grey.getBlue());
            levels.add(grey.getRed());
        }
        levels.sort(null);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i) - levels.get(i - 1)).isGreaterThanOrEqualTo(24);
        }
    }

    @Test
    void manyColoursStillKeepTheOrderOfTheirLightness() {
        List<Colour> many = Stream.iterate(0x10, level -> level <= 0xf0, level -> level + 0x10)
                .map(level -> new Colour(level * 0x10101))
                .toList();
        Palette palette = Palette.blackAndWhite(many);
        List<Integer> levels =
                many.stream().map(colour -> palette.yarn(colour).getRed()).toList();
        assertThat(levels).isSorted().doesNotHaveDuplicates();
        assertThat(levels).allMatch(level -> level > 40 && level < 250);
    }

    @Test
    void onPaperYarnsKeepTheirColour() {
        assertThat(Palette.onPaper().yarn(new Colour(0x2a6f78))).isEqualTo(new Color(0x2a6f78));
    }

    /** WCAG 2: contrast (L₁ + 0.05)/(L₂ + 0.05) of relative luminances; 4.5 for text. */
    @Test
    void wordsAndLinesStandOutFromThePaper() {
        for (Palette palette : List.of(
                Palette.onPaper(), Palette.onLightScreen(), Palette.onDarkScreen(), Palette.blackAndWhite(List.of()))) {
            assertThat(contrast(palette.ink(), palette.paper())).isGreaterThan(7);
            assertThat(contrast(palette.faint(), palette.paper())).isGreaterThan(4.5);
            assertThat(contrast(palette.accent(), palette.paper())).isGreaterThan(4.5);
        }
    }

    /** #767676 on white 4.5422, #777777 4.4781 (WCAG 2 definition). */
    @Test
    void contrastIsReckonedAsPublished() {
        assertThat(contrast(new Color(0x767676), Color.WHITE)).isBetween(4.5421, 4.5423);
        assertThat(contrast(new Color(0x777777), Color.WHITE)).isBetween(4.4780, 4.4782);
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}

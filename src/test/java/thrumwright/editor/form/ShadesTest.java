package thrumwright.editor.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.yarn.Colour;

class ShadesTest {
    @ParameterizedTest
    @EnumSource(DyeColour.class)
    void goFromLightToDarkThroughTheColourItself(DyeColour dye) {
        List<Colour> shades = Shades.of(dye.colour());
        assertThat(shades).hasSize(7).doesNotHaveDuplicates();
        assertThat(shades.get(3)).isEqualTo(dye.colour());
        assertThat(shades).isSortedAccordingTo((one, other) -> Integer.compare(light(other), light(one)));
    }

    private static int light(Colour colour) {
        return (colour.rgb() >> 16 & 255) + (colour.rgb() >> 8 & 255) + (colour.rgb() & 255);
    }

    @Test
    void aPictureGivesTheMeanRoundThePoint() {
        BufferedImage picture = new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 20; x++) {
            for (int y = 0; y < 20; y++) {
                picture.setRGB(x, y, x < 10 ? 0x204060 : x % 2 == 0 ? 0x000000 : 0xc8c8c8);
            }
        }
        assertThat(Shades.at(picture, 4, 4)).isEqualTo(new Colour(0x204060));
        assertThat(Shades.at(picture, 0, 19)).as("in a corner").isEqualTo(new Colour(0x204060));
        assertThat(Shades.at(picture, 15, 10).rgb() & 255)
                .as("of an uneven yarn")
                .isBetween(0x60, 0x80);
    }
}

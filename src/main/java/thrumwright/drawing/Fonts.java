package thrumwright.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * The program's own fonts (Source Sans 3, SIL Open Font License 1.1), so that every machine shows the same.
 *
 * @param regular at one point, to be derived from
 */
public record Fonts(Font regular, Font italic, Font semibold, Font bold) {
    private static final String FOLDER = "/thrumwright/fonts/";

    /** Each font and the path of its file on the class path, for embedding. */
    public Map<Font, String> files() {
        return Map.of(
                regular, FOLDER + "SourceSans3-Regular.ttf",
                italic, FOLDER + "SourceSans3-It.ttf",
                semibold, FOLDER + "SourceSans3-Semibold.ttf",
                bold, FOLDER + "SourceSans3-Bold.ttf");
    }

    public static Fonts load() {
        return new Fonts(
                font("SourceSans3-Regular.ttf"),
                font("SourceSans3-It.ttf"),
                font("SourceSans3-Semibold.ttf"),
                font("SourceSans3-Bold.ttf"));
    }

    private static Font font(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + file + " is damaged", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

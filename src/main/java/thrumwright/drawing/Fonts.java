package thrumwright.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The program's own fonts (Source Sans 3, SIL Open Font License 1.1), so that every machine shows the same; each at one point, to
 * be derived from, and read when it is first wanted.
 */
public final class Fonts {
    private static final String FOLDER = "/thrumwright/fonts/";
    private static final String REGULAR = "SourceSans3-Regular.ttf";
    private static final String ITALIC = "SourceSans3-It.ttf";
    private static final String SEMIBOLD = "SourceSans3-Semibold.ttf";
    private static final String BOLD = "SourceSans3-Bold.ttf";

    private final Function<String, Font> read;
    private final Map<String, Font> byFile = new ConcurrentHashMap<>();

    private Fonts(Function<String, Font> read) {
        this.read = read;
    }

    public Font regular() {
        return byFile.computeIfAbsent(REGULAR, read);
    }

    public Font italic() {
        return byFile.computeIfAbsent(ITALIC, read);
    }

    public Font semibold() {
        return byFile.computeIfAbsent(SEMIBOLD, read);
    }

    public Font bold() {
        return byFile.computeIfAbsent(BOLD, read);
    }

    /** All of them. */
    public List<Font> all() {
        return List.of(regular(), italic(), semibold(), bold());
    }

    /** The path of a font's file on the class path, for embedding; nothing if it is none of these. */
    public static Optional<String> file(Font font) {
        String name = font.getPSName() + ".ttf";
        return Stream.of(REGULAR, ITALIC, SEMIBOLD, BOLD)
                .filter(name::equals)
                .findFirst()
                .map(FOLDER::concat);
    }

    /** The paths of the files of those that every sheet takes. */
    public static List<String> always() {
        return List.of(FOLDER + REGULAR, FOLDER + SEMIBOLD);
    }

    /** From the class path; Java keeps copies in the temporary folder until it ends. */
    public static Fonts load() {
        return new Fonts(Fonts::font);
    }

    /**
     * From files in a folder, where they are put if they aren't there yet: nothing is left behind however the program ends, and no
     * temporary folder is needed. If nothing can be kept there, as {@link #load()}.
     */
    public static Fonts keptIn(Path folder) {
        return new Fonts(file -> {
            try {
                return Font.createFont(Font.TRUETYPE_FONT, kept(folder, file).toFile());
            } catch (FontFormatException | IOException e) {
                return font(file);
            }
        });
    }

    /** Whole, and the program's own, whatever lay there. */
    private static Path kept(Path folder, String file) throws IOException {
        Path kept = folder.resolve(file);
        byte[] own = bytes(file);
        if (!Files.isRegularFile(kept) || !Arrays.equals(own, Files.readAllBytes(kept))) {
            Files.createDirectories(folder);
            put(own, kept);
        }
        return kept;
    }

    private static void put(byte[] content, Path place) throws IOException {
        Path beside = place.resolveSibling(
                place.getFileName() + "-" + ProcessHandle.current().pid());
        try {
            Files.write(beside, content);
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
            return in.readAllBytes();
        }
    }

    private static Font font(String file) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes(file)));
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + file + " is damaged", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

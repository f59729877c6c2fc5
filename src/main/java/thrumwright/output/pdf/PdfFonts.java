package thrumwright.output.pdf;

import java.awt.Font;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import thrumwright.drawing.Fonts;

/** The program's fonts and their twins in a PDF; only those that are used, and of these only the letters that are. */
final class PdfFonts {
    private final PDDocument document;
    private final Executor beside;
    /** By the paths of their files. */
    private final Map<String, CompletableFuture<PDType0Font>> read = new HashMap<>();

    private final Map<String, Twin> twins = new LinkedHashMap<>();

    /** A font in the document, and what it calls the letters that were met so far. */
    private record Twin(String name, PDType0Font font, Map<Integer, Integer> codes) {}

    /**
     * @param document nobody else's until {@link #embedded()}
     * @param beside reads the fonts, one after the other; those that every sheet takes at once
     */
    PdfFonts(PDDocument document, Executor beside) {
        this.document = document;
        this.beside = beside;
        Fonts.always().forEach(this::reading);
    }

    private CompletableFuture<PDType0Font> reading(String file) {
        return read.computeIfAbsent(file, path -> CompletableFuture.supplyAsync(() -> read(path), beside));
    }

    /** Name of a font among the resources. */
    String name(Font font) {
        return twin(font).name();
    }

    /** What a font calls these letters, two bytes each; nothing if it lacks one of them. */
    Optional<byte[]> codes(Font font, String text) {
        Twin twin = twin(font);
        byte[] codes = new byte[2 * text.length()];
        int at = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int code = twin.codes().computeIfAbsent(text.codePointAt(i), letter -> code(twin.font(), letter));
            if (code == 0) {
                return Optional.empty();
            }
            codes[at++] = (byte) (code >> 8);
            codes[at++] = (byte) code;
        }
        return Optional.of(Arrays.copyOf(codes, at));
    }

    /** The number of its glyph; 0 if there is none. */
    private static int code(PDType0Font font, int letter) {
        int code = font.getCmapLookup().getGlyphId(letter);
        if (code != 0) {
            font.addToSubset(letter);
        }
        return code;
    }

    private Twin twin(Font font) {
        return twins.computeIfAbsent(font.getFontName(), name -> load(font));
    }

    private Twin load(Font font) {
        String file = Fonts.file(font)
                .orElseThrow(() -> new IllegalArgumentException(
                        "a sheet uses the program's own fonts only, not " + font.getFontName()));
        return new Twin("F" + twins.size(), reading(file).join(), new HashMap<>());
    }

    private PDType0Font read(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream(file)) {
            TrueTypeFont parsed = new LettersOnly().parse(new RandomAccessReadBuffer(Unhinted.of(in.readAllBytes())));
            return PDType0Font.load(document, parsed, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All fonts that are used, by their names; no letter may be added after this. */
    COSDictionary embedded() throws IOException {
        COSDictionary embedded = new COSDictionary();
        for (Twin twin : twins.values()) {
            twin.font().subset();
            embedded.setItem(COSName.getPDFName(twin.name()), twin.font());
        }
        return embedded;
    }

    /**
     * Leaves out the programs that move outlines on to the dots of a coarse screen. {@link Unhinted} has left out the rules
     * that put several letters together: a ligature has no letters of its own, so that “left” would be found as “le”.
     */
    private static final class LettersOnly extends TTFParser {
        private static final Set<String> LEFT_OUT = Set.of("fpgm", "prep", "cvt ");

        @Override
        protected TTFTable readTable(String tag) {
            return super.readTable(LEFT_OUT.contains(tag) ? "left out" : tag);
        }
    }
}

package thrumwright.output.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A TrueType font whose letters no longer say how they are moved on to the dots of a coarse screen: a third of their weight,
 * for which neither printers nor today's viewers ask. Each letter's program (OpenType, table glyf) becomes a row of noughts,
 * an instruction that moves nothing, which packs into a few bytes; nothing changes its place.
 */
record Unhinted(ByteBuffer font) {
    private static final String LIGATURES = "GSUB";
    private static final int BOX = 8;
    /** Of composite glyphs. */
    private static final int WORDS = 1;

    private static final int ONE_SCALE = 8;
    private static final int MORE = 32;
    private static final int TWO_SCALES = 64;
    private static final int FOUR_SCALES = 128;
    private static final int PROGRAM = 256;

    /** @param font a whole file, which is changed */
    static byte[] of(byte[] font) {
        Unhinted unhinted = new Unhinted(ByteBuffer.wrap(font));
        unhinted.clear();
        unhinted.forgetLigatures();
        return font;
    }

    /** Under a name that nobody knows the rules that put letters together aren't read, which would take long. */
    private void forgetLigatures() {
        int entry = entry(LIGATURES);
        if (entry > 0) {
            font.put(entry, (byte) Character.toLowerCase(LIGATURES.charAt(0)));
        }
    }

    private void clear() {
        int glyphs = table("glyf");
        int places = table("loca");
        int count = unsigned(table("maxp") + 4);
        boolean wide = unsigned(table("head") + 50) == 1;
        for (int i = 0; i < count; i++) {
            int from = place(places, i, wide);
            if (from < place(places, i + 1, wide)) {
                clear(glyphs + from);
            }
        }
    }

    private int place(int places, int glyph, boolean wide) {
        return wide ? font.getInt(places + 4 * glyph) : 2 * unsigned(places + 2 * glyph);
    }

    private int table(String tag) {
        int entry = entry(tag);
        if (entry < 0) {
            throw new IllegalArgumentException("a font without " + tag);
        }
        return font.getInt(entry + 8);
    }

    /** Where the list of tables has one; −1 if it hasn't. */
    private int entry(String tag) {
        for (int i = 0; i < unsigned(4); i++) {
            int entry = 12 + 16 * i;
            if (new String(font.array(), entry, 4, StandardCharsets.US_ASCII).equals(tag)) {
                return entry;
            }
        }
        return -1;
    }

    private int unsigned(int at) {
        return Short.toUnsignedInt(font.getShort(at));
    }

    private void clear(int glyph) {
        int outlines = font.getShort(glyph);
        int at = glyph + 2 + BOX;
        if (outlines >= 0) {
            noughts(at + 2 * outlines);
            return;
        }
        int flags;
        do {
            flags = unsigned(at);
            at += 4 + placed(flags);
        } while ((flags & MORE) != 0);
        if ((flags & PROGRAM) != 0) {
            noughts(at);
        }
    }

    /** How many bytes tell where a part of a composite glyph lies. */
    private static int placed(int flags) {
        int offset = (flags & WORDS) != 0 ? 4 : 2;
        int scales = (flags & ONE_SCALE) != 0 ? 2 : (flags & TWO_SCALES) != 0 ? 4 : (flags & FOUR_SCALES) != 0 ? 8 : 0;
        return offset + scales;
    }

    /** A program begins with its length. */
    private void noughts(int program) {
        int first = program + 2;
        Arrays.fill(font.array(), first, first + unsigned(program), (byte) 0);
    }
}

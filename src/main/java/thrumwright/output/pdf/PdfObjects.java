package thrumwright.output.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.zip.Deflater;

/**
 * Writes the numbered objects of a PDF as they come and keeps of each only where it lies, so that a file of any length
 * needs hardly any memory. Small objects go into compressed object streams (ISO 32000-1, 7.5.7), where they lie in a
 * cross-reference stream (7.5.8).
 */
final class PdfObjects {
    /** So many small objects share an object stream. */
    private static final int TOGETHER = 200;
    /** Content is compressed quickly: the tightest saves an eighth and takes longer than all the rest. */
    private static final int LEVEL = 8;
    /** The line after the header tells that the file isn't text (7.5.2). */
    private static final byte[] HEADER = "%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n".getBytes(StandardCharsets.ISO_8859_1);

    private final OutputStream out;
    private final MessageDigest sum = digest();
    private final Deflater deflater = new Deflater(LEVEL);
    private final PdfBytes head = new PdfBytes(256);
    private final PdfBytes small = new PdfBytes(1 << 15);
    private final PdfBytes smallIndex = new PdfBytes(1 << 12);
    private byte[] squeezed = new byte[1 << 16];
    private int smallCount;
    private int smallStream;
    private long written;
    private int last;
    /** For each object its offset, or the number of its object stream and its place there, as {@link #within}. */
    private long[] places = new long[256];

    PdfObjects(OutputStream out) throws IOException {
        this.out = out;
        write(HEADER, HEADER.length);
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The number of an object that is written later. */
    int reserve() {
        last++;
        if (last == places.length) {
            places = Arrays.copyOf(places, 2 * last);
        }
        return last;
    }

    /** Writes a small object that is no stream. */
    void small(int number, PdfBytes body) throws IOException {
        if (smallCount == 0) {
            smallStream = reserve();
        }
        places[number] = within(smallStream, smallCount);
        smallIndex.add((long) number).add(' ').add((long) small.size()).add(' ');
        small.add(body).add('\n');
        smallCount++;
        if (smallCount == TOGETHER) {
            flushSmall();
        }
    }

    private static long within(int stream, int place) {
        return -((long) stream * TOGETHER + place) - 1;
    }

    private void flushSmall() throws IOException {
        if (smallCount == 0) {
            return;
        }
        String entries = "/Type/ObjStm/N " + smallCount + "/First " + smallIndex.size();
        smallIndex.add(small);
        smallCount = 0;
        stream(smallStream, entries, smallIndex);
        small.clear();
        smallIndex.clear();
    }

    /**
     * Writes a stream, compressed.
     *
     * @param entries of its dictionary but for those that tell how it is stored
     */
    void stream(int number, String entries, PdfBytes content) throws IOException {
        int length = squeeze(content);
        squeezedStream(number, entries + "/Filter/FlateDecode", squeezed, length);
    }

    /** Writes a stream whose bytes are as they are to be. */
    void squeezedStream(int number, String entries, byte[] bytes, int length) throws IOException {
        places[number] = written;
        head.clear();
        head.add((long) number).add(" 0 obj\n<<").add(entries).add("/Length ").add((long) length);
        head.add(">>\nstream\n");
        write(head.array(), head.size());
        write(bytes, length);
        head.clear();
        head.add("\nendstream\nendobj\n");
        write(head.array(), head.size());
    }

    private int squeeze(PdfBytes content) {
        deflater.reset();
        deflater.setInput(content.array(), 0, content.size());
        deflater.finish();
        int length = 0;
        while (!deflater.finished()) {
            if (length == squeezed.length) {
                squeezed = Arrays.copyOf(squeezed, 2 * length);
            }
            length += deflater.deflate(squeezed, length, squeezed.length - length);
        }
        return length;
    }

    private void write(byte[] bytes, int length) throws IOException {
        out.write(bytes, 0, length);
        sum.update(bytes, 0, length);
        written += length;
    }

    /**
     * Writes what is left, and where everything lies.
     *
     * @param root number of the catalog
     * @param info number of the information dictionary
     */
    void finish(int root, int info) throws IOException {
        flushSmall();
        int number = reserve();
        places[number] = written;
        PdfBytes table = new PdfBytes(8 * last);
        row(table, 0, 0, 65535);
        for (int i = 1; i <= last; i++) {
            long place = -places[i] - 1;
            if (place < 0) {
                row(table, 1, places[i], 0);
            } else {
                row(table, 2, place / TOGETHER, (int) (place % TOGETHER));
            }
        }
        long start = written;
        String id = "<" + id() + ">";
        stream(
                number,
                "/Type/XRef/W[1 5 2]/Size " + (last + 1) + "/Root " + root + " 0 R/Info " + info + " 0 R/ID[" + id + id
                        + "]",
                table);
        head.clear();
        head.add("startxref\n").add(start).add("\n%%EOF\n");
        write(head.array(), head.size());
        deflater.end();
    }

    private static void row(PdfBytes table, int kind, long place, int more) {
        table.add((byte) kind);
        for (int shift = 32; shift >= 0; shift -= 8) {
            table.add((byte) (place >> shift));
        }
        table.add((byte) (more >> 8)).add((byte) more);
    }

    /** The same for the same file (14.4). */
    private String id() {
        byte[] whole = sum.digest();
        PdfBytes id = new PdfBytes(32);
        for (int i = 0; i < 16; i++) {
            id.hex(whole[i]);
        }
        return id.toString();
    }
}

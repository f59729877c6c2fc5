package thrumwright.output.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.concurrent.Executor;

/**
 * Writes the numbered objects of a PDF as they come and keeps of each only where it lies, so that a file of any length
 * needs hardly any memory. Small objects go into compressed object streams (ISO 32000-1, 7.5.7), where they lie in a
 * cross-reference stream (7.5.8).
 */
final class PdfObjects implements Closeable {
    /** So many small objects share an object stream. */
    private static final int TOGETHER = 200;

    private final PdfStreams streams;
    private final PdfBytes small = new PdfBytes(1 << 15);
    private final PdfBytes smallIndex = new PdfBytes(1 << 12);
    private int smallCount;
    private int smallStream;
    private int last;
    /** For each small object the number of its object stream and its place there, as {@link #within}; 0 for streams. */
    private long[] places = new long[256];

    /** @param beside packs and writes, one after the other */
    PdfObjects(OutputStream out, Executor beside) throws IOException {
        streams = new PdfStreams(out, beside);
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
        streams.pack(number, entries, Arrays.copyOf(content.array(), content.size()));
    }

    /** Writes a stream whose bytes are as they are to be; they are handed over. */
    void squeezedStream(int number, String entries, byte[] bytes) throws IOException {
        streams.packed(number, entries, bytes);
    }

    /**
     * Writes what is left, and where everything lies.
     *
     * @param root number of the catalog
     * @param info number of the information dictionary
     */
    void finish(int root, int info) throws IOException {
        flushSmall();
        PdfOutput.Written written = streams.written();
        int number = reserve();
        PdfBytes table = new PdfBytes(8 * last);
        row(table, 0, 0, 65535);
        for (int i = 1; i <= last; i++) {
            long place = -places[i] - 1;
            if (i == number) {
                row(table, 1, written.end(), 0);
            } else if (place < 0) {
                row(table, 1, written.places()[i], 0);
            } else {
                row(table, 2, place / TOGETHER, (int) (place % TOGETHER));
            }
        }
        String id = "<" + id(written.sum()) + ">";
        stream(
                number,
                "/Type/XRef/W[1 5 2]/Size " + (last + 1) + "/Root " + root + " 0 R/Info " + info + " 0 R/ID[" + id + id
                        + "]",
                table);
        streams.end(written.end());
    }

    private static void row(PdfBytes table, int kind, long place, int more) {
        table.add((byte) kind);
        for (int shift = 32; shift >= 0; shift -= 8) {
            table.add((byte) (place >> shift));
        }
        table.add((byte) (more >> 8)).add((byte) more);
    }

    /** The same for the same file (14.4). */
    private static String id(byte[] sum) {
        PdfBytes id = new PdfBytes(32);
        for (int i = 0; i < 16; i++) {
            id.hex(sum[i]);
        }
        return id.toString();
    }

    @Override
    public void close() {
        streams.close();
    }
}

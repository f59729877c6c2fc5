package thrumwright.output.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.zip.Deflater;

/**
 * The streams of a PDF, packed and written one after the other as they come, while whoever made them goes on: packing takes as
 * long as all the rest. What goes wrong is told by a later call, by {@link #written} or {@link #end} at the latest.
 */
final class PdfStreams implements Closeable {
    /** The tightest saves an eighth and takes longer than all the rest. */
    private static final int LEVEL = 8;
    /** So many may wait to be packed; a page is one, and a few of its drawings may be. */
    private static final int AHEAD = 16;
    /** The line after the header tells that the file isn't text (ISO 32000-1, 7.5.2). */
    private static final byte[] HEADER = "%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n".getBytes(StandardCharsets.ISO_8859_1);

    private final OutputStream out;
    private final MessageDigest sum = digest();
    private final Deflater deflater = new Deflater(LEVEL);
    private final Executor beside;
    private final Deque<CompletableFuture<Void>> waiting = new ArrayDeque<>();
    private CompletableFuture<Void> last = CompletableFuture.completedFuture(null);
    private final PdfBytes head = new PdfBytes(256);
    private byte[] squeezed = new byte[1 << 16];
    private long written;
    /** Where each stream lies, by its number. */
    private long[] places = new long[256];

    private volatile boolean closed;

    /** @param beside does one thing after the other */
    PdfStreams(OutputStream out, Executor beside) throws IOException {
        this.out = out;
        this.beside = beside;
        write(HEADER, HEADER.length);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Packs and writes one. */
    void pack(int number, String entries, byte[] content) throws IOException {
        later(() -> {
            int length = squeeze(content);
            write(number, entries + "/Filter/FlateDecode", squeezed, length);
        });
    }

    /** Writes one whose bytes are as they are to be. */
    void packed(int number, String entries, byte[] content) throws IOException {
        later(() -> write(number, entries, content, content.length));
    }

    /** Something that writes. */
    private interface Work {
        void run() throws IOException;
    }

    private void later(Work work) throws IOException {
        if (waiting.size() == AHEAD) {
            await(waiting.remove());
        }
        last = last.thenRunAsync(
                () -> {
                    try {
                        if (!closed) {
                            work.run();
                        }
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                beside);
        waiting.add(last);
    }

    private static void await(CompletableFuture<Void> work) throws IOException {
        try {
            work.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof UncheckedIOException cause) {
                throw cause.getCause();
            }
            throw e;
        }
    }

    private int squeeze(byte[] content) {
        deflater.reset();
        deflater.setInput(content);
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

    private void write(int number, String entries, byte[] bytes, int length) throws IOException {
        if (number >= places.length) {
            places = Arrays.copyOf(places, 2 * number);
        }
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

    private void write(byte[] bytes, int length) throws IOException {
        out.write(bytes, 0, length);
        sum.update(bytes, 0, length);
        written += length;
    }

    /**
     * What was written until now.
     *
     * @param places where each stream lies, by its number
     * @param end behind all of them
     * @param sum SHA-256 of all bytes
     */
    record Written(long[] places, long end, byte[] sum) {}

    /**
     * Waits until all that came is written.
     *
     * @throws IOException if it couldn't be
     */
    Written written() throws IOException {
        await(last);
        return new Written(places.clone(), written, sum.digest());
    }

    /** Writes what follows the last stream. */
    void end(long start) throws IOException {
        await(last);
        head.clear();
        head.add("startxref\n").add(start).add("\n%%EOF\n");
        write(head.array(), head.size());
    }

    /** Nothing is written any more once this returns. */
    @Override
    public void close() {
        closed = true;
        last.handle((done, wrong) -> done).join();
        deflater.end();
    }
}

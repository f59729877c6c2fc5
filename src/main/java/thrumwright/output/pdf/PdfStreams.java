package thrumwright.output.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
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

    private final PdfOutput out;
    private final Deflater deflater = new Deflater(LEVEL);
    private final Executor beside;
    private final Deque<CompletableFuture<Void>> waiting = new ArrayDeque<>();
    private CompletableFuture<Void> last = CompletableFuture.completedFuture(null);
    private byte[] squeezed = new byte[1 << 16];
    private volatile boolean closed;

    /** @param beside does one thing after the other */
    PdfStreams(OutputStream out, Executor beside) throws IOException {
        this.out = new PdfOutput(out);
        this.beside = beside;
    }

    /** Packs and writes one. */
    void pack(int number, String entries, byte[] content) throws IOException {
        later(() -> {
            int length = squeeze(content);
            out.stream(number, entries + "/Filter/FlateDecode", squeezed, length);
        });
    }

    /** Writes one whose bytes are as they are to be. */
    void packed(int number, String entries, byte[] content) throws IOException {
        later(() -> out.stream(number, entries, content, content.length));
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

    /**
     * Waits until all that came is written; to be asked once.
     *
     * @throws IOException if it couldn't be
     */
    PdfOutput.Written written() throws IOException {
        await(last);
        return out.written();
    }

    /** Writes what follows the last stream, which lies there. */
    void end(long lastPlace) throws IOException {
        await(last);
        out.end(lastPlace);
    }

    /** Nothing is written any more once this returns. */
    @Override
    public void close() {
        closed = true;
        last.handle((done, wrong) -> done).join();
        deflater.end();
    }
}

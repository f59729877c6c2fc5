package thrumwright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Waits for what is no ordinary file, such as a pipe, but not for ever: at its other end there may be nobody. */
final class Patience {
    private static final long SECONDS = 5;

    private Patience() {}

    /** What is done with such a file. */
    interface Work<T> {
        T run() throws IOException, FileProblem;
    }

    /**
     * Does it on a thread of its own, which is left behind if nothing comes of it.
     *
     * @throws FileProblem if nothing came of it in time
     */
    static <T> T with(Path file, Work<T> work) throws IOException, FileProblem {
        CompletableFuture<T> result = new CompletableFuture<>();
        Thread thread = new Thread(() -> complete(result, work), "pipe");
        thread.setDaemon(true);
        thread.start();
        try {
            return result.get(SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new FileProblem("file.silent", Map.of("file", file), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new FileProblem("file.silent", Map.of("file", file), e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof FileProblem problem) {
                throw problem;
            } else if (e.getCause() instanceof IOException problem) {
                throw problem;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static <T> void complete(CompletableFuture<T> result, Work<T> work) {
        try {
            result.complete(work.run());
        } catch (IOException | FileProblem | RuntimeException e) {
            result.completeExceptionally(e);
        }
    }
}

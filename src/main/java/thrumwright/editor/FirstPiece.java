package thrumwright.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import thrumwright.store.FileProblem;

/** What the first window shows: read and planned on a thread of its own, while the look is made. */
final class FirstPiece {
    private final Optional<Path> file;
    private final boolean asking;
    private final FutureTask<Workroom.ToOpen> reading;

    private FirstPiece(Optional<Path> file, boolean asking, Callable<Workroom.ToOpen> read) {
        this.file = file;
        this.asking = asking;
        this.reading = new FutureTask<>(read);
        Thread thread = new Thread(reading, "first piece");
        thread.setDaemon(true);
        thread.start();
    }

    static FirstPiece demo() {
        return new FirstPiece(Optional.empty(), false, Workroom::demo);
    }

    /** A file's piece; without one it is to be asked what to begin with. */
    static FirstPiece of(Optional<Path> file) {
        return file.map(path -> new FirstPiece(file, false, () -> Workroom.read(path)))
                .orElseGet(() -> new FirstPiece(file, true, Workroom::nothing));
    }

    /**
     * What is shown first, and what is to be said of it.
     *
     * @param asking whether it is to be asked what to begin with
     */
    record First(Workroom.ToOpen work, List<String> problems, boolean asking) {}

    /** Waits for it; where a file can't be read, it is the demo piece with the reason. */
    First in(Workroom room) {
        try {
            First first = new First(read(reading), List.of(), asking);
            file.ifPresent(room.place().settings()::used);
            return first;
        } catch (FileProblem e) {
            String name = file.map(Path::getFileName).map(Path::toString).orElse("");
            String why = room.place().texts().say("message.not-opened", Map.of("file", name, "why", e.getMessage()));
            return new First(demoInstead(), List.of(why), false);
        }
    }

    private static Workroom.ToOpen demoInstead() {
        try {
            return Workroom.demo();
        } catch (FileProblem damaged) {
            throw new IllegalStateException("the demo piece is damaged", damaged);
        }
    }

    private static Workroom.ToOpen read(FutureTask<Workroom.ToOpen> reading) throws FileProblem {
        try {
            return reading.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("nobody interrupts a start", e);
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        }
    }

    /** What went wrong on the other thread goes wrong on this one. */
    private static FileProblem thrown(Throwable cause) {
        if (cause instanceof FileProblem problem) {
            return problem;
        } else if (cause instanceof Error error) {
            throw error;
        }
        throw new IllegalStateException("the first piece can't be opened", cause);
    }
}

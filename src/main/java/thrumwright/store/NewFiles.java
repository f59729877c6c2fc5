package thrumwright.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Files that are first written whole beside their places and then take them, all together; until then every old file is as
 * it was. What hasn't taken its place when this is closed is removed.
 */
public final class NewFiles implements AutoCloseable {
    private static final String BEGINNING = ".thrumwright-";
    private static final String ENDING = ".new";

    /** Nothing takes so long to write. */
    private static final Duration LEFT_FOR = Duration.ofDays(1);

    /** What was written, by the place that it is to take. */
    private final Map<Path, Path> waiting = new LinkedHashMap<>();

    private int count;

    /** What goes into a file, written as it is made. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes all of it.
         *
         * @param out stays open
         * @throws IOException if it can't be made, or can't be written there
         */
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes a file beside its place. What is no ordinary file, such as a printer or a pipe, is written to as it stands.
     *
     * @throws FileProblem if it can't be written
     * @throws IOException if its content can't be made
     */
    public void add(Path file, Content content) throws FileProblem, IOException {
        Written out;
        try {
            Path place = place(file);
            out = waiting.containsValue(place) ? new Written(place) : Patience.with(file, () -> new Written(place));
        } catch (IOException e) {
            throw SafeFile.unwritable(file, e);
        }
        try (out) {
            content.writeTo(out);
            out.finish();
            count++;
        } catch (IOException e) {
            if (out.failed) {
                throw SafeFile.unwritable(file, e);
            }
            throw e;
        }
    }

    /** Takes away what programs left that ended while they wrote. What can't be taken away now can be the next time. */
    private static void sweep(Path folder) {
        FileTime before = FileTime.from(Instant.now().minus(LEFT_FOR));
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEGINNING + "*" + ENDING)) {
            for (Path each : left) {
                if (Files.getLastModifiedTime(each).compareTo(before) < 0) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (DirectoryIteratorException | IOException e) {
            // no reason to refuse what is to be written, which will say itself if the disk is ill
        }
    }

    /** An empty file beside another, of the sort that is swept away if it is left. */
    static Path beside(Path target) throws IOException {
        return Files.createTempFile(folder(target), BEGINNING, ENDING);
    }

    /** Where the content goes at first. */
    private Path place(Path file) throws IOException, FileProblem {
        Path target = SafeFile.target(file);
        if (Files.isDirectory(target)) {
            throw new FileProblem("file.folder-to-write", Map.of("file", file), null);
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            return target;
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
        sweep(folder(target));
        Path beside = beside(target);
        waiting.put(target, beside);
        return beside;
    }

    /**
     * Lets every file take its place; returns how many there are.
     *
     * @throws FileProblem if one can't; every place then has what it had
     */
    public int keep() throws FileProblem {
        if (waiting.size() < 2) {
            for (Map.Entry<Path, Path> only : waiting.entrySet()) {
                take(only.getKey(), only.getValue());
            }
        } else {
            takeAll();
        }
        for (Path folder : folders()) {
            SafeFile.force(folder);
        }
        return count;
    }

    private void takeAll() throws FileProblem {
        try (Before before = Before.of(waiting.keySet())) {
            for (Map.Entry<Path, Path> each : waiting.entrySet()) {
                take(each.getKey(), each.getValue());
                before.taken(each.getKey());
            }
            before.forget();
        }
    }

    private Set<Path> folders() {
        return waiting.keySet().stream().map(NewFiles::folder).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Path folder(Path target) {
        return Objects.requireNonNull(target.getParent(), "only a folder has no folder");
    }

    private static void take(Path place, Path written) throws FileProblem {
        try {
            SafeFile.keepPermissions(place, written);
            SafeFile.move(written, place);
        } catch (IOException e) {
            throw SafeFile.unwritable(place, e);
        }
    }

    /** @throws FileProblem if what was left over can't be removed */
    @Override
    public void close() throws FileProblem {
        for (Path beside : waiting.values()) {
            try {
                Files.deleteIfExists(beside);
            } catch (IOException e) {
                throw new FileProblem("file.left-over", Map.of("file", beside), e);
            }
        }
    }

    /** What is written, and whether it was the writing that failed. */
    private static final class Written extends OutputStream {
        private final Path place;
        private final FileChannel channel;
        private final OutputStream out;
        private boolean failed;

        Written(Path place) throws IOException {
            this.place = place;
            channel = FileChannel.open(place, StandardOpenOption.WRITE);
            out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16);
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            failed = true;
            out.write(bytes, from, count);
            failed = false;
        }

        /** Nothing is lost after this, even if the power fails. */
        void finish() throws IOException {
            failed = true;
            out.flush();
            if (Files.isRegularFile(place)) {
                channel.force(true);
            }
            failed = false;
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}

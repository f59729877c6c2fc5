package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A file held by this process for as long as it lives: the system lets go when the process ends, however it ends. Nobody
 * else in this process may open the same file meanwhile, since closing it would let go too.
 */
final class Hold implements AutoCloseable {
    private final FileChannel channel;

    private Hold(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * @return empty if somebody holds it
     * @throws IOException if it can't be opened or held at all
     */
    static Optional<Hold> on(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new Hold(channel));
            }
        } catch (OverlappingFileLockException e) {
            // held by this very process: the same answer as for another
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}

package thrumwright.testing.disk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A disk on which things go wrong: a wrapper of the usual file system that fails at a chosen deed, once or for good, or
 * loses power there. What the program under test gets is an ordinary {@link Path}. After a crash {@link #after} makes of
 * the folder what such a crash may leave: what wasn't forced is dropped, zeroed, halved or kept.
 */
public final class Disk {
    /** What the disk knows of something that isn't surely on it yet; undone from the last to the first. */
    private record Pending(Path folder, Undo undo) {}

    private interface Undo {
        void run() throws IOException;
    }

    private final DiskSystem system = new DiskSystem(this);
    private final List<String> deeds = new ArrayList<>();
    private final Map<Path, Optional<byte[]>> forced = new HashMap<>();
    private final Deque<Pending> names = new ArrayDeque<>();
    private final int at;
    private final Function<String, IOException> fault;
    private final boolean forGood;
    private boolean crashed;

    private Disk(int at, Function<String, IOException> fault, boolean forGood) {
        this.at = at;
        this.fault = fault;
        this.forGood = forGood;
    }

    /** A disk on which nothing goes wrong. */
    public static Disk sound() {
        return new Disk(-1, deed -> null, false);
    }

    /**
     * A disk that fails.
     *
     * @param at the deed that fails, from 0
     * @param reason what the system says
     * @param forGood whether all that comes after it fails too
     */
    public static Disk failing(int at, String reason, boolean forGood) {
        return new Disk(at, deed -> new FileSystemException(deed, null, reason), forGood);
    }

    /** A disk that loses power at a deed, counted from 0. */
    public static Disk crashing(int at) {
        return new Disk(at, deed -> null, true);
    }

    /** A path of this disk. */
    public Path path(Path real) {
        return new DiskPath(system, real);
    }

    /** All that was done or tried. */
    public List<String> deeds() {
        return List.copyOf(deeds);
    }

    /** Whether the deed at which something goes wrong was reached. */
    public boolean reached() {
        return at >= 0 && deeds.size() > at;
    }

    void alive() {
        if (crashed) {
            throw new Crash();
        }
    }

    void before(String deed) throws IOException {
        alive();
        int now = deeds.size();
        deeds.add(deed);
        if (at < 0 || now < at || now > at && !forGood) {
            return;
        }
        IOException failure = fault.apply(deed);
        if (failure == null) {
            crashed = true;
            throw new Crash();
        }
        throw failure;
    }

    void made(Path file) {
        forced.put(file, Optional.of(new byte[0]));
        names.push(new Pending(file.getParent(), () -> Files.deleteIfExists(file)));
    }

    void writing(Path file) throws IOException {
        if (!forced.containsKey(file)) {
            forced.put(file, Optional.of(Files.readAllBytes(file)));
        }
    }

    void moving(Path from, Path to) throws IOException {
        Optional<byte[]> old = Files.exists(to) ? Optional.of(Files.readAllBytes(to)) : Optional.empty();
        names.push(new Pending(to.getParent(), () -> {
            Files.move(to, from, StandardCopyOption.REPLACE_EXISTING);
            if (old.isPresent()) {
                Files.write(to, old.get());
            }
        }));
        Optional<byte[]> unforced = forced.remove(from);
        if (unforced != null) {
            forced.put(to, unforced);
        } else {
            forced.remove(to);
        }
    }

    void deleting(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return;
        }
        byte[] old = Files.readAllBytes(file);
        names.push(new Pending(file.getParent(), () -> Files.write(file, old)));
        forced.remove(file);
    }

    /** A file's content is safe now; a folder's names are. */
    void forced(Path file) {
        forced.remove(file);
        names.removeIf(pending -> pending.folder().equals(file));
    }

    /** Leaves the folder as the crash may have left it. */
    public void after(Loss loss) {
        try {
            if (loss == Loss.DROP) {
                // names first: what was written lies under its old name then
                dropContents();
                while (!names.isEmpty()) {
                    names.pop().undo().run();
                }
            } else if (loss != Loss.KEEP) {
                spoil(loss);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void dropContents() throws IOException {
        for (Map.Entry<Path, Optional<byte[]>> file : forced.entrySet()) {
            if (Files.exists(file.getKey())) {
                Files.write(file.getKey(), file.getValue().orElse(new byte[0]));
            }
        }
    }

    private void spoil(Loss loss) throws IOException {
        for (Path file : forced.keySet()) {
            if (Files.exists(file)) {
                byte[] whole = Files.readAllBytes(file);
                Files.write(file, loss == Loss.ZERO ? new byte[whole.length] : Arrays.copyOf(whole, whole.length / 2));
            }
        }
    }
}

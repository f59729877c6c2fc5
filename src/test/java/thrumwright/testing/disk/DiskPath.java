package thrumwright.testing.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/** A path on a {@link Disk}: what lies behind it is a path of the usual file system. */
record DiskPath(DiskSystem system, Path real) implements Path {
    static Path real(Path path) {
        return path instanceof DiskPath disk ? disk.real : path;
    }

    private Path on(Path other) {
        return other == null ? null : new DiskPath(system, other);
    }

    @Override
    public DiskSystem getFileSystem() {
        return system;
    }

    @Override
    public boolean isAbsolute() {
        return real.isAbsolute();
    }

    @Override
    public Path getRoot() {
        return on(real.getRoot());
    }

    @Override
    public Path getFileName() {
        return on(real.getFileName());
    }

    @Override
    public Path getParent() {
        return on(real.getParent());
    }

    @Override
    public int getNameCount() {
        return real.getNameCount();
    }

    @Override
    public Path getName(int index) {
        return on(real.getName(index));
    }

    @Override
    public Path subpath(int beginIndex, int endIndex) {
        return on(real.subpath(beginIndex, endIndex));
    }

    @Override
    public boolean startsWith(Path other) {
        return real.startsWith(real(other));
    }

    @Override
    public boolean endsWith(Path other) {
        return real.endsWith(real(other));
    }

    @Override
    public Path normalize() {
        return on(real.normalize());
    }

    @Override
    public Path resolve(Path other) {
        return on(real.resolve(real(other)));
    }

    @Override
    public Path relativize(Path other) {
        return on(real.relativize(real(other)));
    }

    @Override
    public URI toUri() {
        return real.toUri();
    }

    @Override
    public Path toAbsolutePath() {
        return on(real.toAbsolutePath());
    }

    @Override
    public Path toRealPath(LinkOption... options) throws IOException {
        return on(real.toRealPath(options));
    }

    @Override
    public WatchKey register(WatchService watcher, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int compareTo(Path other) {
        return real.compareTo(real(other));
    }

    @Override
    public String toString() {
        return real.toString();
    }
}

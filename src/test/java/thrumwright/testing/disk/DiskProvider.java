package thrumwright.testing.disk;

import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tells a {@link Disk} of everything before it is done on the usual file system. */
final class DiskProvider extends FileSystemProvider {
    private final FileSystemProvider real = FileSystems.getDefault().provider();
    private final DiskSystem system;
    private final Disk disk;

    DiskProvider(DiskSystem system, Disk disk) {
        this.system = system;
        this.disk = disk;
    }

    private static Path real(Path path) {
        return DiskPath.real(path);
    }

    @Override
    public String getScheme() {
        return "disk";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> env) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        Path file = real(path);
        disk.before("open " + file.getFileName());
        boolean made = options.contains(StandardOpenOption.WRITE) && !Files.exists(file);
        FileChannel channel = real.newFileChannel(file, options, attributes);
        if (Files.isDirectory(file)) {
            return new DiskChannel(disk, file, channel);
        }
        if (made) {
            disk.made(file);
        }
        return new DiskChannel(disk, file, channel);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        disk.before("list " + real(folder).getFileName());
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> all = real.newDirectoryStream(real(folder), path -> true)) {
            for (Path path : all) {
                Path mine = new DiskPath(system, path);
                if (filter.accept(mine)) {
                    found.add(mine);
                }
            }
        }
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return found.iterator();
            }

            @Override
            public void close() {
                found.clear();
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        disk.before("make folder " + real(folder).getFileName());
        real.createDirectory(real(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        disk.before("delete " + real(path).getFileName());
        disk.deleting(real(path));
        real.delete(real(path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
        disk.before("copy " + real(source).getFileName());
        real.copy(real(source), real(target), options);
        disk.made(real(target));
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
        disk.before("move " + real(source).getFileName() + " to " + real(target).getFileName());
        disk.moving(real(source), real(target));
        real.move(real(source), real(target), options);
    }

    @Override
    public boolean isSameFile(Path path, Path other) throws IOException {
        return real.isSameFile(real(path), real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.isHidden(real(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.getFileStore(real(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        disk.alive();
        real.checkAccess(real(path), modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        disk.alive();
        return real.getFileAttributeView(real(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        disk.alive();
        return real.readAttributes(real(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        disk.alive();
        return real.readAttributes(real(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        disk.before("attribute of " + real(path).getFileName());
        real.setAttribute(real(path), attribute, value, options);
    }

    @Override
    public Path readSymbolicLink(Path link) throws IOException {
        return new DiskPath(system, real.readSymbolicLink(real(link)));
    }
}

package thrumwright.testing.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** An open file on a {@link Disk}. */
final class DiskChannel extends FileChannel {
    private final Disk disk;
    private final Path file;
    private final FileChannel real;

    DiskChannel(Disk disk, Path file, FileChannel real) {
        this.disk = disk;
        this.file = file;
        this.real = real;
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        disk.before("read " + file.getFileName());
        return real.read(into);
    }

    @Override
    public long read(ByteBuffer[] into, int offset, int length) throws IOException {
        disk.before("read " + file.getFileName());
        return real.read(into, offset, length);
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        disk.before("write " + file.getFileName());
        disk.writing(file);
        return real.write(from);
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) throws IOException {
        disk.before("write " + file.getFileName());
        disk.writing(file);
        return real.write(from, offset, length);
    }

    @Override
    public long position() throws IOException {
        return real.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        real.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return real.size();
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        disk.before("truncate " + file.getFileName());
        disk.writing(file);
        real.truncate(size);
        return this;
    }

    @Override
    public void force(boolean also) throws IOException {
        disk.before("force " + file.getFileName());
        real.force(also);
        disk.forced(file);
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) throws IOException {
        disk.before("read " + file.getFileName());
        return real.transferTo(position, count, target);
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) throws IOException {
        disk.before("write " + file.getFileName());
        disk.writing(file);
        return real.transferFrom(source, position, count);
    }

    @Override
    public int read(ByteBuffer into, long position) throws IOException {
        disk.before("read " + file.getFileName());
        return real.read(into, position);
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        disk.before("write " + file.getFileName());
        disk.writing(file);
        return real.write(from, position);
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        disk.before("lock " + file.getFileName());
        return real.lock(position, size, shared);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        disk.before("lock " + file.getFileName());
        return real.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        real.close();
    }
}

package thrumwright.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Reads and writes files so that nothing is lost: the old file is there until the new one is whole. */
public final class SafeFile {
    private static final long MOST_BYTES = 8_000_000;

    private SafeFile() {}

    /** Trouble that another part of the program had with a file. */
    public static FileProblem problem(String sentence, Exception cause) {
        return new FileProblem(sentence, cause);
    }

    /** @throws FileProblem if it can't be read, isn't text, or is far too long */
    public static String read(Path file) throws FileProblem {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new FileProblem(file + " is far too long to be a piece.", null);
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
        } catch (NoSuchFileException e) {
            throw new FileProblem("There is no file " + file + ".", e);
        } catch (AccessDeniedException e) {
            throw new FileProblem("You aren't allowed to read " + file + ".", e);
        } catch (CharacterCodingException e) {
            throw new FileProblem(file + " is not a text file in UTF-8.", e);
        } catch (IOException e) {
            throw new FileProblem(file + " can't be read.", e);
        }
    }

    /**
     * Puts a text into a file: first whole beside it, then in its place.
     *
     * @throws FileProblem if that can't be done; the old file is then as it was
     */
    public static void write(Path file, String text) throws FileProblem {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** As {@link #write(Path, String)}, for any bytes. */
    public static void write(Path file, byte[] bytes) throws FileProblem {
        Path beside = null;
        try {
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path folder = target.getParent();
            if (folder == null || Files.isDirectory(target)) {
                throw new FileProblem(file + " is a folder; give the name of a file in it.", null);
            }
            beside = Files.createTempFile(folder, "." + target.getFileName(), ".new");
            fill(beside, bytes);
            keepPermissions(target, beside);
            move(beside, target);
        } catch (NoSuchFileException e) {
            throw new FileProblem("There is no folder for " + file + ".", e);
        } catch (AccessDeniedException e) {
            throw new FileProblem("You aren't allowed to write " + file + ".", e);
        } catch (IOException e) {
            throw new FileProblem(file + " can't be written; the old file is as it was.", e);
        } finally {
            remove(beside);
        }
    }

    private static void fill(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** A temporary file is for its owner only; the new file keeps what the old one allowed, or what is usual. */
    private static void keepPermissions(Path target, Path beside) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(beside, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        if (Files.exists(target)) {
            view.setPermissions(Files.getPosixFilePermissions(target));
        } else {
            Path usual = target.resolveSibling(beside.getFileName() + ".usual");
            Files.createFile(usual);
            try {
                view.setPermissions(Files.getPosixFilePermissions(usual, LinkOption.NOFOLLOW_LINKS));
            } finally {
                Files.delete(usual);
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path beside) throws FileProblem {
        try {
            if (beside != null) {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new FileProblem("The unfinished file " + beside + " couldn't be removed; you may delete it.", e);
        }
    }
}

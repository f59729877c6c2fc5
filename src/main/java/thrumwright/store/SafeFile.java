package thrumwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Objects;
import java.util.Set;

/** Reads and writes files so that nothing is lost: the old file is there until the new one is whole. */
public final class SafeFile {
    private static final int MOST_BYTES = 8_000_000;
    private static final int MOST_LINKS = 40;

    private SafeFile() {}

    /** Trouble that another part of the program had with a file. */
    public static FileProblem problem(String sentence, Exception cause) {
        return new FileProblem(sentence, cause);
    }

    /** @throws FileProblem if it can't be read, isn't text, or is far too long */
    public static String read(Path file) throws FileProblem {
        if (Files.isDirectory(file)) {
            throw new FileProblem(file + " is a folder, not a file.", null);
        }
        try (InputStream in = Files.newInputStream(file)) {
            return text(in, file.toString());
        } catch (NoSuchFileException e) {
            throw new FileProblem("There is no file " + file + ".", e);
        } catch (AccessDeniedException e) {
            throw new FileProblem("You aren't allowed to read " + file + ".", e);
        } catch (IOException e) {
            throw new FileProblem(file + " can't be read" + reason(e) + ".", e);
        }
    }

    /**
     * All the text that a stream has.
     *
     * @param name what to call it in a message
     * @throws FileProblem if it isn't text, or is far too long
     * @throws IOException if it can't be read
     */
    public static String text(InputStream in, String name) throws FileProblem, IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new FileProblem(name + " is far too long to be a piece.", null);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new FileProblem(name + " is not a text file in UTF-8.", e);
        }
    }

    /**
     * Puts a piece into a file, once it is sure that it can be read back.
     *
     * @throws FileProblem if that can't be done; the old file is then as it was
     */
    public static void write(Path file, PieceFile piece) throws FileProblem {
        write(file, piece.checkedText());
    }

    /**
     * Puts a text into a file: first whole beside it, then in its place. What is no ordinary file, such as a printer or a
     * pipe, is written to as it stands.
     *
     * @throws FileProblem if that can't be done; the old file is then as it was
     */
    public static void write(Path file, String text) throws FileProblem {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** As {@link #write(Path, String)}, for any bytes. */
    public static void write(Path file, byte[] bytes) throws FileProblem {
        try {
            Path target = target(file);
            if (Files.isDirectory(target)) {
                throw new FileProblem(file + " is a folder; give the name of a file in it.", null);
            } else if (!Files.exists(target) || Files.isRegularFile(target)) {
                replace(target, bytes);
            } else {
                Files.write(target, bytes, StandardOpenOption.WRITE);
            }
        } catch (NoSuchFileException e) {
            throw new FileProblem("There is no folder for " + file + ".", e);
        } catch (AccessDeniedException e) {
            throw new FileProblem("You aren't allowed to write " + file + ".", e);
        } catch (IOException e) {
            String old = Files.exists(file) ? "; the old file is as it was." : ".";
            throw new FileProblem(file + " can't be written" + reason(e) + old, e);
        }
    }

    /** What the system says, such as that the disk is full. */
    private static String reason(IOException problem) {
        String said = problem instanceof FileSystemException of ? of.getReason() : problem.getMessage();
        return said == null || said.isBlank() ? "" : " (" + said + ")";
    }

    /** The file itself, though links lead to it; it need not be there. */
    private static Path target(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemException(file.toString(), null, "its links lead nowhere");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static void replace(Path target, byte[] bytes) throws IOException, FileProblem {
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
        Path folder = Objects.requireNonNull(target.getParent(), "only a folder has no folder");
        Path beside = Files.createTempFile(folder, ".thrumwright-", ".new");
        try {
            fill(beside, bytes);
            keepPermissions(target, beside);
            move(beside, target);
        } finally {
            remove(beside);
        }
        force(folder);
    }

    /** Makes sure that the new name is on disk too; where folders can't be opened, the system sees to it by itself. */
    private static void force(Path folder) throws FileProblem {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (AccessDeniedException e) {
            // as on Windows
        } catch (IOException e) {
            throw new FileProblem(
                    "The file is written to " + folder + ", but the system doesn't say whether it will stay there"
                            + reason(e) + ". Save once more, or in another place.",
                    e);
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
            keepPermissions(target, view);
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

    /** Some file systems refuse; the text matters more than who may read it, and a new file is for its owner only. */
    private static void keepPermissions(Path target, PosixFileAttributeView view) throws IOException {
        Set<PosixFilePermission> wanted = Files.getPosixFilePermissions(target);
        try {
            view.setPermissions(wanted);
        } catch (FileSystemException e) {
            if (!Files.isWritable(target)) {
                throw e;
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
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            throw new FileProblem("The unfinished file " + beside + " couldn't be removed; you may delete it.", e);
        }
    }
}

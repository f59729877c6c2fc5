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
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import thrumwright.measure.Phrase;

/** Reads and writes files so that nothing is lost: the old file is there until the new one is whole. */
public final class SafeFile {
    private static final int MOST_BYTES = 8_000_000;
    private static final int MOST_LINKS = 40;

    private SafeFile() {}

    /** Trouble that another part of the program had with a file. */
    public static FileProblem problem(Phrase why, Exception cause) {
        return new FileProblem(why, cause);
    }

    /** @throws FileProblem if it can't be read, isn't text, or is far too long */
    public static String read(Path file) throws FileProblem {
        if (Files.isDirectory(file)) {
            throw new FileProblem("file.folder", Map.of("file", file), null);
        }
        try {
            boolean ordinary = !Files.exists(file) || Files.isRegularFile(file);
            return ordinary ? whole(file) : Patience.with(file, () -> whole(file));
        } catch (NoSuchFileException e) {
            throw new FileProblem("file.none", Map.of("file", file), e);
        } catch (AccessDeniedException e) {
            throw new FileProblem("file.not-allowed", Map.of("file", file), e);
        } catch (IOException e) {
            throw failed("file.unread", file, e);
        }
    }

    private static String whole(Path file) throws FileProblem, IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return text(in, file.toString());
        }
    }

    /**
     * Puts a text into a file that isn't there yet, so that nobody else's of that name is written over.
     *
     * @return whether there was none
     * @throws FileProblem if it can't be written there; there is no file then
     */
    public static boolean begins(Path file, String text) throws FileProblem {
        if (!isNew(file)) {
            return false;
        }
        try {
            write(file, text);
            return true;
        } catch (FileProblem e) {
            discard(file);
            throw e;
        }
    }

    /** Takes a name that nobody has. */
    private static boolean isNew(Path file) throws FileProblem {
        try {
            Files.createFile(file);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // an empty file is left, and what failed before it is told
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
            throw new FileProblem("file.too-long", Map.of("file", name), null);
        }
        ByteBuffer left = ByteBuffer.wrap(bytes);
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(left)
                    .toString();
        } catch (CharacterCodingException e) {
            throw new FileProblem("file.not-text", Map.of("file", name, "line", line(bytes, left.position())), e);
        }
    }

    /** From 1. */
    private static long line(byte[] bytes, int at) {
        return 1 + IntStream.range(0, at).filter(i -> bytes[i] == '\n').count();
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

    static void write(Path file, byte[] bytes) throws FileProblem {
        try {
            write(file, out -> out.write(bytes));
        } catch (IOException e) {
            throw unwritable(file, e);
        }
    }

    /**
     * As {@link #write(Path, String)}, for what is written as it is made.
     *
     * @throws FileProblem if it can't be written; the old file is then as it was
     * @throws IOException if it can't be made; the old file is then as it was
     */
    public static void write(Path file, NewFiles.Content content) throws FileProblem, IOException {
        try (NewFiles one = new NewFiles()) {
            one.add(file, content);
            one.keep();
        }
    }

    /** That a file can't be written, by what the system threw. */
    static FileProblem unwritable(Path file, IOException problem) {
        if (problem instanceof NoSuchFileException) {
            return new FileProblem("file.no-folder", Map.of("file", file), problem);
        } else if (problem instanceof AccessDeniedException) {
            return new FileProblem("file.not-allowed-write", Map.of("file", file), problem);
        }
        return failed(Files.exists(file) ? "file.unwritten" : "file.unwritten-new", file, problem);
    }

    /** With what the system says, such as that the disk is full, if it says anything. */
    private static FileProblem failed(String key, Path file, IOException problem) {
        String said = problem instanceof FileSystemException of ? of.getReason() : problem.getMessage();
        return said == null || said.isBlank()
                ? new FileProblem(key, Map.of("file", file), problem)
                : new FileProblem(key + "-why", Map.of("file", file, "why", said), problem);
    }

    /** The file itself, though links lead to it; it need not be there. */
    static Path target(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemException(file.toString(), null, new Phrase("file.links").toString());
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    /**
     * A temporary file is for its owner only; the new file keeps what the old one allowed and whose it was, as far as the system lets
     * it, or has what is usual. The text matters more than who may read it, so a refusal is none.
     */
    static void keepPermissions(Path target, Path beside) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(beside, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        try {
            allow(target, beside, view);
        } catch (FileSystemException e) {
            if (Files.exists(target) && !Files.isWritable(target)) {
                throw e;
            }
        }
    }

    private static void allow(Path target, Path beside, PosixFileAttributeView view) throws IOException {
        if (Files.exists(target)) {
            keepOwner(Files.readAttributes(target, PosixFileAttributes.class), view);
            view.setPermissions(Files.getPosixFilePermissions(target));
        } else {
            view.setPermissions(usual(target.resolveSibling(beside.getFileName() + ".usual")));
        }
    }

    private static Set<PosixFilePermission> usual(Path trial) throws IOException {
        Files.createFile(trial);
        try {
            return Files.getPosixFilePermissions(trial, LinkOption.NOFOLLOW_LINKS);
        } finally {
            Files.delete(trial);
        }
    }

    /** Only the system's keeper may give files away; a group that one belongs to may be kept. */
    private static void keepOwner(PosixFileAttributes old, PosixFileAttributeView view) throws IOException {
        PosixFileAttributes now = view.readAttributes();
        try {
            if (!now.group().equals(old.group())) {
                view.setGroup(old.group());
            }
            if (!now.owner().equals(old.owner())) {
                view.setOwner(old.owner());
            }
        } catch (FileSystemException e) {
            // then it is the writer's
        }
    }

    /**
     * Makes sure that new names in a folder are on disk too; where folders can't be opened, the system sees to it by
     * itself.
     */
    static void force(Path folder) throws FileProblem {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (AccessDeniedException e) {
            // as on Windows
        } catch (IOException e) {
            throw failed("file.not-forced", folder, e);
        }
    }

    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

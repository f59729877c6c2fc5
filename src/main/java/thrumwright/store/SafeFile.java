package thrumwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
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
import java.nio.file.attribute.PosixFileAttributeView;

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
            return new FileProblem("There is no folder for " + file + ".", problem);
        } else if (problem instanceof AccessDeniedException) {
            return new FileProblem("You aren't allowed to write " + file + ".", problem);
        }
        return new FileProblem(file + " can't be written" + reason(problem) + "; the old file is as it was.", problem);
    }

    /** What the system says, such as that the disk is full. */
    private static String reason(IOException problem) {
        String said = problem instanceof FileSystemException of ? of.getReason() : problem.getMessage();
        return said == null || said.isBlank() ? "" : " (" + said + ")";
    }

    /** The file itself, though links lead to it; it need not be there. */
    static Path target(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemException(file.toString(), null, "its links lead nowhere");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    /** A temporary file is for its owner only; the new file keeps what the old one allowed, or what is usual. */
    static void keepPermissions(Path target, Path beside) throws IOException {
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

    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

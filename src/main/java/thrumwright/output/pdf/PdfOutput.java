package thrumwright.output.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/** The bytes of a PDF as they go out: what was written, and where in it each stream lies. Knows of no other thread. */
final class PdfOutput {
    /** The line after the header tells that the file isn't text (ISO 32000-1, 7.5.2). */
    private static final byte[] HEADER = "%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n".getBytes(StandardCharsets.ISO_8859_1);

    private final OutputStream out;
    private final MessageDigest sum = digest();
    private final PdfBytes head = new PdfBytes(256);
    private long written;
    /** Where each stream lies, by its number. */
    private long[] places = new long[256];

    PdfOutput(OutputStream out) throws IOException {
        this.out = out;
        write(HEADER, HEADER.length);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * What was written until now.
     *
     * @param places where each stream lies, by its number
     * @param end behind all of them
     * @param sum SHA-256 of all bytes
     */
    record Written(long[] places, long end, byte[] sum) {}

    /** To be asked once. */
    Written written() {
        return new Written(places.clone(), written, sum.digest());
    }

    void stream(int number, String entries, byte[] bytes, int length) throws IOException {
        if (number >= places.length) {
            places = Arrays.copyOf(places, 2 * number);
        }
        places[number] = written;
        head.clear();
        head.add((long) number).add(" 0 obj\n<<").add(entries).add("/Length ").add((long) length);
        head.add(">>\nstream\n");
        write(head.array(), head.size());
        write(bytes, length);
        head.clear();
        head.add("\nendstream\nendobj\n");
        write(head.array(), head.size());
    }

    /** Writes what follows the last stream, which lies there. */
    void end(long last) throws IOException {
        head.clear();
        head.add("startxref\n").add(last).add("\n%%EOF\n");
        write(head.array(), head.size());
    }

    private void write(byte[] bytes, int length) throws IOException {
        out.write(bytes, 0, length);
        sum.update(bytes, 0, length);
        written += length;
    }
}

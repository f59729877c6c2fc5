package thrumwright.output.pdf;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import thrumwright.output.vector.PathFigures;

/** Text of a PDF as it grows: plain signs and numbers, with nothing between them but what is asked for. */
final class PdfBytes {
    private static final int HUNDREDTHS = 100;
    private static final int THOUSANDTHS = 1000;
    /** For steps that add up. */
    private static final int FINE = 10_000;

    private static final byte[] HEX = "0123456789ABCDEF".getBytes(StandardCharsets.US_ASCII);

    private byte[] bytes;
    private int size;

    PdfBytes(int room) {
        bytes = new byte[room];
    }

    int size() {
        return size;
    }

    void clear() {
        size = 0;
    }

    byte[] array() {
        return bytes;
    }

    PdfBytes add(byte sign) {
        if (size == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * size + 1);
        }
        bytes[size++] = sign;
        return this;
    }

    PdfBytes add(char sign) {
        return add((byte) sign);
    }

    PdfBytes add(byte[] signs) {
        return add(signs, signs.length);
    }

    PdfBytes add(PdfBytes other) {
        return add(other.bytes, other.size);
    }

    private PdfBytes add(byte[] signs, int count) {
        if (size + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * (size + count));
        }
        System.arraycopy(signs, 0, bytes, size, count);
        size += count;
        return this;
    }

    /** @param text of ASCII only */
    PdfBytes add(String text) {
        for (int i = 0; i < text.length(); i++) {
            add((byte) text.charAt(i));
        }
        return this;
    }

    /** @param number not below 0 */
    PdfBytes add(long number) {
        digits(number);
        return this;
    }

    /** A length or place to hundredths, and a space. */
    PdfBytes number(double number) {
        return hundredths(PathFigures.hundredths(number));
    }

    /** A number in whole hundredths. */
    static double coarsely(double number) {
        return PathFigures.hundredths(number) / (double) HUNDREDTHS;
    }

    /** A number in whole parts of ten thousand. */
    static double finely(double number) {
        return Math.rint(number * FINE) / FINE;
    }

    /** A number in parts of ten thousand, and a space. */
    PdfBytes fine(double number) {
        return decimal((int) Math.rint(number * FINE), FINE);
    }

    /** A number of hundredths, and a space. */
    PdfBytes hundredths(int number) {
        return decimal(number, HUNDREDTHS);
    }

    /** A share to thousandths, and a space. */
    PdfBytes share(double share) {
        return decimal((int) Math.floor(share * THOUSANDTHS + 0.5), THOUSANDTHS);
    }

    /** Without a nought before the point or after the last digit. */
    private PdfBytes decimal(int number, int unit) {
        int size = Math.abs(number);
        if (number < 0) {
            add('-');
        }
        int part = size % unit;
        if (size >= unit || part == 0) {
            digits(size / unit);
        }
        if (part != 0) {
            add('.');
        }
        for (int place = unit / 10; part != 0; place /= 10) {
            add((byte) ('0' + part / place));
            part %= place;
        }
        return add(' ');
    }

    private void digits(long number) {
        if (number >= 10) {
            digits(number / 10);
        }
        add((byte) ('0' + number % 10));
    }

    /** A reference to a numbered object. */
    PdfBytes reference(int number) {
        return add((long) number).add(" 0 R");
    }

    /** A text for people, in angle brackets: PDFDocEncoding where ASCII does, else UTF-16 (ISO 32000-1, 7.9.2.2). */
    PdfBytes text(String text) {
        boolean plain = text.chars().allMatch(sign -> sign >= ' ' && sign <= '~');
        byte[] signs = plain
                ? text.getBytes(StandardCharsets.US_ASCII)
                : ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE);
        add('<');
        for (byte sign : signs) {
            hex(sign);
        }
        return add('>');
    }

    /** Two hexadecimal digits. */
    PdfBytes hex(int value) {
        return add(HEX[value >> 4 & 15]).add(HEX[value & 15]);
    }

    /** Its signs as text, if they are all ASCII. */
    @Override
    public String toString() {
        return new String(bytes, 0, size, StandardCharsets.US_ASCII);
    }
}

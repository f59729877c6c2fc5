package thrumwright.output.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;

/** Copies what PDFBox has made into a PDF that is written as it comes: fonts, and what the document says about itself. */
final class PdfCopy {
    private final PdfObjects objects;
    private final Map<COSBase, Integer> numbers = new IdentityHashMap<>();
    private final Deque<COSDictionary> waiting = new ArrayDeque<>();

    PdfCopy(PdfObjects objects) {
        this.objects = objects;
    }

    /** What stands in a copy for an object that is written elsewhere. */
    COSDictionary known(int number) {
        COSDictionary stands = new COSDictionary();
        numbers.put(stands, number);
        return stands;
    }

    /** Writes a dictionary and all that it leads to; returns its number. */
    int write(COSDictionary dictionary) throws IOException {
        int number = number(dictionary);
        while (!waiting.isEmpty()) {
            writeOne(waiting.remove());
        }
        return number;
    }

    /** Writes a dictionary that has its number already. */
    void write(COSDictionary dictionary, int number) throws IOException {
        numbers.put(dictionary, number);
        waiting.add(dictionary);
        write(dictionary);
    }

    private int number(COSDictionary dictionary) {
        return numbers.computeIfAbsent(dictionary, fresh -> {
            waiting.add(dictionary);
            return objects.reserve();
        });
    }

    private void writeOne(COSDictionary dictionary) throws IOException {
        PdfBytes body = new PdfBytes(1 << 10);
        if (dictionary instanceof COSStream stream) {
            entries(body, stream);
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            try (InputStream in = stream.createRawInputStream()) {
                in.transferTo(raw);
            }
            objects.squeezedStream(number(stream), body.toString(), raw.toByteArray());
        } else {
            body.add("<<");
            entries(body, dictionary);
            objects.small(number(dictionary), body.add(">>"));
        }
    }

    private void entries(PdfBytes body, COSDictionary dictionary) throws IOException {
        boolean stream = dictionary instanceof COSStream;
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            if (!(stream && entry.getKey().equals(COSName.LENGTH))) {
                value(body, entry.getKey());
                body.add(' ');
                value(body, entry.getValue());
            }
        }
    }

    private void value(PdfBytes body, COSBase value) throws IOException {
        if (value instanceof COSObject object) {
            value(body, object.getObject());
        } else if (value instanceof COSDictionary dictionary) {
            body.reference(number(dictionary));
        } else if (value instanceof COSArray array) {
            body.add('[');
            for (COSBase each : array) {
                value(body, each);
                body.add(' ');
            }
            body.add(']');
        } else {
            body.add(plain(value));
        }
    }

    private static byte[] plain(COSBase value) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (value instanceof COSName name) {
            name.writePDF(out);
        } else if (value instanceof COSString string) {
            COSWriter.writeString(string, out);
        } else if (value instanceof COSInteger integer) {
            integer.writePDF(out);
        } else if (value instanceof COSFloat decimal) {
            decimal.writePDF(out);
        } else if (value instanceof COSBoolean truth) {
            truth.writePDF(out);
        } else if (value == null || value instanceof COSNull) {
            COSNull.NULL.writePDF(out);
        } else {
            throw new IllegalArgumentException("no plain value: " + value);
        }
        return out.toByteArray();
    }
}

package thrumwright.output.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

class PdfStreamsTest {
    private static final byte[] NOTHING = new byte[0];

    private final ExecutorService beside = Executors.newSingleThreadExecutor();

    @AfterEach
    void endTheThread() {
        beside.shutdown();
    }

    @Test
    void theyLieWhereItIsSaidInTheOrderInWhichTheyCame() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfStreams streams = new PdfStreams(out, beside)) {
            for (int number = 1; number <= 600; number++) {
                streams.pack(number, "/Is " + number, new byte[number]);
            }
            PdfOutput.Written written = streams.written();
            String text = out.toString(StandardCharsets.ISO_8859_1);
            assertThat(written.end()).isEqualTo(out.size());
            for (int number = 1; number <= 600; number++) {
                assertThat(text.substring((int) written.places()[number]))
                        .startsWith(number + " 0 obj\n<</Is " + number + "/Filter/FlateDecode");
            }
        }
    }

    @Test
    void aFullDiskIsTold() {
        OutputStream full = new OutputStream() {
            private int left = 40_000;

            @Override
            public void write(int one) throws IOException {
                left--;
                if (left < 0) {
                    throw new IOException("no room left");
                }
            }
        };
        Fonts fonts = Fonts.load();
        SheetPages pages =
                SheetLayout.of(Plan.of(Pieces.panel()), PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);

        assertThatThrownBy(() -> PdfFile.write(pages, full))
                .isInstanceOf(IOException.class)
                .hasMessage("no room left");
    }

    @Test
    void nothingIsWrittenOnceItIsClosed() throws Exception {
        Slow out = new Slow();
        PdfStreams streams = new PdfStreams(out, beside);
        streams.packed(1, "/First", NOTHING);
        streams.packed(2, "/Second", NOTHING);
        out.begun.await();
        CompletableFuture<Void> closing = CompletableFuture.runAsync(streams::close);
        out.goOn.countDown();
        closing.get(1, TimeUnit.MINUTES);
        String then = out.text();

        assertThat(out.within).as("somebody still writes").isFalse();
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(50));
        assertThat(out.text()).isEqualTo(then).contains("/First");
    }

    /** Takes its time for all but the first bytes. */
    private static final class Slow extends OutputStream {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final CountDownLatch begun = new CountDownLatch(1);
        private final CountDownLatch goOn = new CountDownLatch(1);
        private volatile boolean within;

        @Override
        public void write(int one) {
            bytes.write(one);
        }

        @Override
        public void write(byte[] many, int from, int length) throws IOException {
            if (bytes.size() > 0) {
                within = true;
                begun.countDown();
                try {
                    goOn.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
            }
            bytes.write(many, from, length);
            within = false;
        }

        String text() {
            return bytes.toString(StandardCharsets.ISO_8859_1);
        }
    }
}

package thrumwright.output.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.SheetLayout;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

class ProgressTest {
    private final Fonts fonts = Fonts.load();
    private final SheetPages pages =
            SheetLayout.of(Plan.of(Pieces.panel()), PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);

    /** Remembers what it was told, and stops after so many pages. */
    private static final class Watcher implements Progress {
        final List<Integer> told = new ArrayList<>();
        final int stopAfter;

        Watcher(int stopAfter) {
            this.stopAfter = stopAfter;
        }

        @Override
        public void done(int done, int all) {
            told.add(done);
        }

        @Override
        public boolean stopping() {
            return told.size() > stopAfter;
        }
    }

    @Test
    void everyPageOfAPdfIsTold() throws IOException {
        Watcher watcher = new Watcher(Integer.MAX_VALUE);
        PdfFile.write(() -> pages, new ByteArrayOutputStream(), watcher);
        assertThat(watcher.told)
                .isEqualTo(IntStream.rangeClosed(0, pages.count()).boxed().toList());
    }

    @Test
    void aPdfThatIsStoppedIsNoWholeFile() {
        Watcher watcher = new Watcher(2);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThatThrownBy(() -> PdfFile.write(() -> pages, out, watcher)).isInstanceOf(Stopped.class);
        assertThat(watcher.told).containsExactly(0, 1, 2);
        assertThat(out.toString(StandardCharsets.ISO_8859_1)).doesNotContain("%%EOF");
    }
}

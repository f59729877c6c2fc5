package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.drawing.Fonts;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.Stopped;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;

class SheetFilesTest {
    private final Plan plan = Plan.of(Pieces.panel());
    private final SheetLook look = new SheetLook(PageSetup.usual(Paper.A4), true);
    private final SheetFiles writer = new SheetFiles(plan, look, Fonts::load, Locale.UK);

    private Map<String, byte[]> write(SheetForm form, String name, Progress progress) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        writer.write(form, name, 40, progress, (file, content) -> {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            content.writeTo(out);
            files.put(file, out.toByteArray());
        });
        return files;
    }

    private List<String> numbered(String stem, String ending) {
        int pages = look.layOut(plan, Fonts.load(), Locale.UK).count();
        return IntStream.rangeClosed(1, pages)
                .mapToObj(page -> stem + "-" + page + ending)
                .toList();
    }

    @Test
    void formsWithPagesMakeAFileForEach() throws IOException {
        assertThat(write(SheetForm.PNG, "marsh.png", Progress.UNWATCHED))
                .containsOnlyKeys(numbered("marsh", ".png"))
                .allSatisfy((name, bytes) -> assertThat(bytes).startsWith(0x89, 'P', 'N', 'G'));
        assertThat(write(SheetForm.SVG, "marsh", Progress.UNWATCHED)).containsOnlyKeys(numbered("marsh", ".svg"));
    }

    @Test
    void theOthersAreOneFile() throws IOException {
        assertThat(write(SheetForm.PDF, "marsh.pdf", Progress.UNWATCHED).get("marsh.pdf"))
                .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(text(SheetForm.HTML, "marsh.html")).startsWith("<!DOCTYPE html>");
        assertThat(text(SheetForm.TEXT, "marsh.txt")).startsWith("Worked panel\n====");
    }

    private String text(SheetForm form, String name) throws IOException {
        return new String(write(form, name, Progress.UNWATCHED).get(name), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @EnumSource(SheetForm.class)
    void everyFormCanBeStoppedBeforeItHasMadeAFile(SheetForm form) {
        Progress stopAtOnce = new Progress() {
            @Override
            public void done(int pages, int all) {
                assertThat(pages).isZero();
            }

            @Override
            public boolean stopping() {
                return true;
            }
        };
        assertThatThrownBy(() -> writer.write(form, "marsh", 40, stopAtOnce, (name, content) -> {
                    content.writeTo(OutputStream.nullOutputStream());
                    throw new AssertionError("made " + name);
                }))
                .isInstanceOf(Stopped.class);
    }

    @Test
    void aNameTellsItsForm() {
        assertThat(SheetForm.named("Marsh.PDF")).contains(SheetForm.PDF);
        assertThat(SheetForm.named("marsh.txt")).contains(SheetForm.TEXT);
        assertThat(SheetForm.named("marsh")).isEmpty();
    }
}

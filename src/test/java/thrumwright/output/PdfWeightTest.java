package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.store.BuiltIn;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;

/** How many bytes a page takes: what is drawn stands once in the file. */
class PdfWeightTest {
    /** Of a sheet's page. */
    private static final int MOST = 25_000;
    /** Of a class's page: a class of 200 looms, three pages each, is to stay below 15 MB. */
    private static final int MOST_IN_A_CLASS = 20_000;

    private static final Fonts FONTS = Fonts.load();

    static List<String> demos() {
        return BuiltIn.DEMO.names();
    }

    private static Piece demo(String name) throws Exception {
        return PieceFile.read(BuiltIn.DEMO.text(name)).piece();
    }

    private static byte[] pdf(SheetPages pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages, out);
        return out.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aPageWeighsLittle(String name) throws Exception {
        SheetPages pages =
                SheetLayout.of(Plan.of(demo(name)), PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
        assertThat(pdf(pages).length / pages.count()).isLessThan(MOST);
    }

    static Stream<String> structures() {
        return Structures.builtIn().all().stream().map(Structure::id);
    }

    @ParameterizedTest
    @MethodSource("structures")
    void aPageOfEachStructureWeighsLittle(String id) throws Exception {
        Piece piece = Structures.builtIn().byId(id).orElseThrow().on(Pieces.panel(), Place.START);
        SheetPages pages =
                SheetLayout.of(Plan.of(piece), PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
        assertThat(pdf(pages).length / pages.count()).isLessThan(MOST);
    }

    @Test
    void aClassWeighsLittle() throws Exception {
        ClassPlan plan = ClassPlan.of(new RandomClasses(5).next(6, demo("saltmarsh-panel.json")));
        ClassPages pages = new ClassPages(
                plan, PageSetup.usual(Paper.A4), SheetSection.USUAL, FONTS, Palette.onPaper(), Locale.UK);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(pages.title(), pages, out, Progress.UNWATCHED);
        int count = 0;
        for (int i = 0; i < pages.count(); i++) {
            count += pages.sheet(i).count();
        }
        assertThat(out.size() / count).isLessThan(MOST_IN_A_CLASS);
    }
}

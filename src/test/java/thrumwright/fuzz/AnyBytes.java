package thrumwright.fuzz;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import thrumwright.block.Amount;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Refused;
import thrumwright.measure.Sett;
import thrumwright.measure.Unit;
import thrumwright.output.SheetLayout;
import thrumwright.output.html.HtmlFile;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.ClassText;
import thrumwright.sheet.PlainText;
import thrumwright.sheet.StepSheet;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.StructureFile;
import thrumwright.yarn.Colour;

/**
 * What a fuzzer calls with bytes of its own: files of every sort, read, planned, told and written again, and what may be typed into
 * fields. Whatever isn't refused as it is declared to be is a fault.
 */
public final class AnyBytes {
    private static final List<Consumer<String>> TYPED = List.of(
            text -> same(Length.parse(text)),
            text -> same(Length.parse(text, Unit.INCH)),
            Sett::parse,
            Amount::parse,
            Colour::parse);

    private static final Fonts FONTS = Fonts.load();

    /** Words take longer than reading, and pages so much longer than all else, that only a share of the pieces is told and drawn. */
    private static final int TOLD_ONE_IN = 4;

    private static final int DRAWN_ONE_IN = 64;

    private AnyBytes() {}

    /** The name is the fuzzer's. Loading all classes of the readers takes longer than what the first file is given. */
    public static void fuzzerInitialize() throws FileProblem {
        for (String name : BuiltIn.DEMO.names()) {
            file(BuiltIn.DEMO.text(name));
        }
        pages(Plan.of(
                PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0))).piece()));
    }

    /** The name and the shape are the fuzzer's. The first byte says what the others are. */
    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        String text = new String(Arrays.copyOfRange(data, 1, data.length), StandardCharsets.UTF_8);
        int sort = Math.floorMod(data[0], TYPED.size() + 1);
        if (sort < TYPED.size()) {
            typed(text, TYPED.get(sort));
        } else {
            file(text);
        }
    }

    private static void typed(String text, Consumer<String> field) {
        try {
            field.accept(text);
        } catch (Refused refused) {
            told(refused.getMessage());
        }
    }

    private static void same(Length read) {
        if (Length.parse(read.text()).mm() != read.mm()) {
            throw new IllegalStateException("“" + read.text() + "” is read as another length");
        }
    }

    private static void told(String sentence) {
        if (sentence.isBlank() || sentence.startsWith("java.")) {
            throw new IllegalStateException("that is no sentence: " + sentence);
        }
    }

    private static void file(String text) {
        try {
            switch (FileSort.of(text)) {
                case PIECE -> piece(PieceFile.read(text));
                case CLASS -> group(ClassFile.read(text, AnyBytes::nowhere));
                case STRUCTURE -> StructureFile.read(text).checkedText();
            }
        } catch (FileProblem refused) {
            told(refused.getMessage());
        }
    }

    private static String nowhere(String name) throws FileProblem {
        return PieceFile.read("").text();
    }

    private static void piece(PieceFile file) throws FileProblem {
        if (!PieceFile.read(file.checkedText()).text().equals(file.text())) {
            throw new IllegalStateException("written otherwise than it is read");
        }
        Plan plan = Plan.of(file.piece());
        int share = file.text().hashCode();
        if (Math.floorMod(share, TOLD_ONE_IN) == 0) {
            PlainText.of(StepSheet.of(plan, Locale.UK), Phrases.of("thrumwright.sheet.steps", Locale.UK));
        }
        if (Math.floorMod(share, DRAWN_ONE_IN) == 0) {
            pages(plan);
        }
    }

    private static void pages(Plan plan) {
        HtmlFile.of(plan, false, Optional.empty(), FONTS, Palette.onPaper(), Locale.UK);
        try {
            PdfFile.write(
                    SheetLayout.of(plan, PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK),
                    OutputStream.nullOutputStream());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void group(ClassFile file) throws FileProblem {
        file.checkedText();
        ClassText.of(ClassSheet.of(ClassPlan.of(file.set()), Locale.UK), Locale.UK);
    }
}

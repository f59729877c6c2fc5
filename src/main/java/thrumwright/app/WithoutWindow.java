package thrumwright.app;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import thrumwright.commandline.PlanText;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrase;
import thrumwright.measure.Phrases;
import thrumwright.output.SheetLayout;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.pdf.PdfFile;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.ClassText;
import thrumwright.store.BuiltIn;
import thrumwright.store.ClassFile;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.PieceFile;
import thrumwright.store.SafeFile;
import thrumwright.store.UserFolder;

/** What the program shows where there is no display: the demo piece's step sheet and plan. */
final class WithoutWindow {
    private final Phrases texts = Phrases.of("thrumwright.app.said", Locale.UK);
    private final PrintStream out;

    WithoutWindow(PrintStream out) {
        this.out = out;
    }

    /**
     * Writes the step sheet into a folder under a name that is free, prints the plan's summary, and says where and what next.
     *
     * @throws FileProblem if the sheet can't be written
     */
    void show(Path folder) throws FileProblem {
        String name = BuiltIn.DEMO.names().get(0);
        Plan plan = Plan.of(PieceFile.read(BuiltIn.DEMO.text(name)).piece());
        Path sheet = free(folder, FileSort.stem(name) + "-steps");
        sheet(plan, sheet);
        out.print(PlanText.of(plan));
        out.println();
        out.println(texts.say("none.sheet"));
        out.println("  " + sheet);
        wayToWindow();
    }

    /** Nothing that is there is written over. */
    private static Path free(Path folder, String stem) {
        Path sheet = folder.resolve(stem + ".pdf");
        for (int i = 2; Files.exists(sheet); i++) {
            sheet = folder.resolve(stem + "-" + i + ".pdf");
        }
        return sheet;
    }

    /**
     * Prints the summary of a piece's plan or the lists of a class, and says what next.
     *
     * @throws FileProblem if the file can't be read
     */
    void plan(Path file) throws FileProblem {
        out.print(summary(file));
        out.println();
        out.println(texts.say("none.window", Map.of("file", file)));
        wayToWindow();
    }

    private static String summary(Path file) throws FileProblem {
        String text = SafeFile.read(file);
        if (FileSort.of(text) != FileSort.CLASS) {
            return PlanText.of(Plan.of(PieceFile.read(text).piece()));
        }
        ClassPlan plan = ClassPlan.of(ClassFile.read(file).set());
        return ClassText.of(ClassSheet.of(plan, Locale.UK), Locale.UK);
    }

    private void wayToWindow() {
        out.println(texts.say("none.way"));
    }

    private static void sheet(Plan plan, Path file) throws FileProblem {
        Fonts fonts = Fonts.keptIn(UserFolder.fonts());
        Supplier<SheetPages> pages =
                () -> SheetLayout.of(plan, PageSetup.usual(Paper.A4), fonts, Palette.onPaper(), Locale.UK);
        try {
            SafeFile.write(file, out -> PdfFile.write(pages, out, Progress.UNWATCHED));
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.no-sheet"), e);
        }
    }
}

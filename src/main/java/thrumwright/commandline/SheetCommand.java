package thrumwright.commandline;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.HtmlFile;
import thrumwright.output.PageSetup;
import thrumwright.output.Paper;
import thrumwright.output.PdfFile;
import thrumwright.output.PngFile;
import thrumwright.output.SheetLayout;
import thrumwright.output.SheetPages;
import thrumwright.output.SvgFile;
import thrumwright.plan.Plan;
import thrumwright.sheet.PlainText;
import thrumwright.sheet.StepSheet;
import thrumwright.store.FileProblem;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

@Command(name = "sheet", description = "Writes the step sheet of a piece.", mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
    /** The forms in which a sheet can be written. */
    enum Form {
        PDF,
        PNG,
        SVG,
        HTML,
        TEXT
    }

    @Spec
    private CommandSpec spec;

    @ParentCommand
    private Commands commands;

    @Parameters(index = "0", paramLabel = "FILE", description = "The piece; “-” for the standard input.")
    private String file;

    @Option(
            names = {"-o", "--to"},
            paramLabel = "NAME",
            description =
                    "Where to write it; “-” for the standard output. PNG and SVG pages are numbered: NAME-1.png …",
            defaultValue = "-")
    private String to;

    @Option(names = "--as", description = "${COMPLETION-CANDIDATES}; otherwise by the ending of NAME, else TEXT.")
    private Form form;

    @Option(names = "--paper", description = "${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.", defaultValue = "A4")
    private Paper paper;

    @Option(
            names = "--distance",
            paramLabel = "METRES",
            description = "From the eye to the hanging sheet, 0.4 to 2; default ${DEFAULT-VALUE}.",
            defaultValue = "1")
    private double distance;

    @Option(names = "--landscape", description = "The paper on its side.")
    private boolean landscape;

    @Option(
            names = "--margin",
            paramLabel = "MM",
            description = "Margins, 5 to 40; default ${DEFAULT-VALUE}.",
            defaultValue = "14")
    private double margin;

    @Option(names = "--grey", description = "Without colours.")
    private boolean grey;

    @Option(
            names = "--dpi",
            description = "Dots per inch of PNG pages, 30 to 600; default ${DEFAULT-VALUE}.",
            defaultValue = "150")
    private int dpi;

    @Override
    public Integer call() throws Exception {
        if (dpi < 30 || dpi > 600) {
            throw new ParameterException(spec.commandLine(), "PNG pages have 30 to 600 dots per inch.");
        }
        PageSetup setup = setup();
        Plan plan = Plan.of(Files.piece(file, commands.console()).piece());
        switch (form()) {
            case TEXT -> text(plan);
            case PDF -> pdf(plan, setup);
            case PNG ->
                numbered(
                        plan,
                        setup,
                        Form.PNG,
                        (pages, page, out) -> PngFile.write(PngFile.picture(pages, page, dpi), out));
            case SVG -> numbered(plan, setup, Form.SVG, SvgFile::write);
            case HTML -> html(plan);
        }
        return Commands.DONE;
    }

    private Form form() {
        if (form != null) {
            return form;
        }
        String name = to.toLowerCase(Locale.ROOT);
        for (Form each : Form.values()) {
            if (name.endsWith("." + each.name().toLowerCase(Locale.ROOT))) {
                return each;
            }
        }
        return Form.TEXT;
    }

    private void text(Plan plan) throws FileProblem {
        String text = PlainText.of(StepSheet.of(plan, Locale.UK), Phrases.of("thrumwright.sheet.steps", Locale.UK));
        Files.write(to, commands.console(), out -> out.writeBytes(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** What the pages' setup refuses was asked wrongly. */
    private PageSetup setup() {
        try {
            return new PageSetup(paper, landscape, margin, distance);
        } catch (IllegalArgumentException refusal) {
            throw new ParameterException(spec.commandLine(), refusal.getMessage(), refusal);
        }
    }

    private SheetPages pages(Plan plan, PageSetup setup, Fonts fonts) {
        return SheetLayout.of(plan, setup, fonts, palette(plan), Locale.UK);
    }

    private Palette palette(Plan plan) {
        return grey ? Palette.blackAndWhite(colours(plan)) : Palette.onPaper();
    }

    private void html(Plan plan) throws FileProblem {
        String text = HtmlFile.of(plan, Fonts.load(), palette(plan), Locale.UK);
        Files.write(to, commands.console(), out -> out.writeBytes(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Colour> colours(Plan plan) {
        return plan.piece().yarns().stream().map(Yarn::colour).toList();
    }

    private void pdf(Plan plan, PageSetup setup) throws FileProblem {
        Fonts fonts = Fonts.load();
        SheetPages pages = pages(plan, setup, fonts);
        Files.write(to, commands.console(), out -> PdfFile.write(pages, fonts, out));
    }

    /** Writes a page. */
    private interface PageWriter {
        void write(SheetPages pages, int page, OutputStream out) throws IOException;
    }

    private void numbered(Plan plan, PageSetup setup, Form kind, PageWriter writer) throws FileProblem {
        if (to.equals("-")) {
            throw new ParameterException(spec.commandLine(), kind + " pages need a name: give one with --to.");
        }
        SheetPages pages = pages(plan, setup, Fonts.load());
        String ending = "." + kind.name().toLowerCase(Locale.ROOT);
        String stem = to.toLowerCase(Locale.ROOT).endsWith(ending) ? to.substring(0, to.length() - 4) : to;
        for (int i = 0; i < pages.count(); i++) {
            int page = i;
            Files.write(stem + "-" + (i + 1) + ending, commands.console(), out -> writer.write(pages, page, out));
        }
    }
}

package thrumwright.commandline;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;
import thrumwright.output.ClassSheets;
import thrumwright.output.SheetFiles;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetSection;
import thrumwright.output.WrittenAt;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;
import thrumwright.store.UserFolder;

@Command(name = "sheet", mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
    private final RootCommand commands;

    @Mixin
    private final InputFile file = new InputFile();

    @Option(names = "--each")
    private boolean each;

    @Option(names = "--as")
    private SheetForm form;

    @Option(names = "--paper", defaultValue = "A4")
    private Paper paper;

    @Option(names = "--distance", paramLabel = "METRES", defaultValue = "1", converter = TypedLength.Metres.class)
    private double distance;

    @Option(names = "--landscape")
    private boolean landscape;

    @Option(names = "--margin", paramLabel = "MM", defaultValue = "14", converter = TypedLength.Millimetres.class)
    private double margin;

    @Option(names = "--grey")
    private boolean grey;

    @Option(names = "--done")
    private boolean done;

    @Option(names = "--parts", paramLabel = "PARTS", split = ",", defaultValue = "cuts,cards,booklet")
    private List<String> parts;

    @Option(names = "--dpi", defaultValue = "150")
    private int dpi;

    @Mixin
    private final Output output;

    SheetCommand(RootCommand commands) {
        this.commands = commands;
        this.output = new Output(commands, "sheet");
    }

    @Override
    public Integer call() throws Exception {
        if (dpi < SheetFiles.LEAST_DPI || dpi > SheetFiles.MOST_DPI) {
            throw new ParameterException(commands.asked("sheet"), Said.of("sheet.dpi"));
        }
        SheetForm wanted = form();
        if (wanted.paged() && output.standard()) {
            throw new ParameterException(commands.asked("sheet"), Said.of("sheet.name", "form", wanted));
        }
        SheetLook look = new SheetLook(setup(), !grey, sections())
                .written(WrittenAt.now())
                .showing(done);
        Loaded work = file.load(commands.console());
        try (output) {
            if (work instanceof Loaded.OfClass some) {
                write(new ClassSheets(some.plan(), look, SheetCommand::fonts, Locale.UK), wanted);
            } else {
                write(new SheetFiles(((Loaded.OfPiece) work).plan(), look, SheetCommand::fonts, Locale.UK), wanted);
            }
            output.keep();
        } catch (Refused refusal) {
            throw new ParameterException(commands.asked("sheet"), refusal.getMessage(), refusal);
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.sheet-unwritten", Map.of("file", output.to())), e);
        }
        return RootCommand.DONE;
    }

    private void write(SheetFiles sheet, SheetForm wanted) throws IOException, FileProblem {
        if (each) {
            throw new ParameterException(commands.asked("sheet"), Said.of("sheet.each.piece", "name", file.name()));
        }
        sheet.write(wanted, output.to(), dpi, progress(), this::keep);
    }

    private void write(ClassSheets sheets, SheetForm wanted) throws IOException, FileProblem {
        if (!each) {
            sheets.together(wanted, output.to(), dpi, progress(), this::keep);
        } else if (output.standard()) {
            throw new ParameterException(commands.asked("sheet"), Said.of("sheet.each.name"));
        } else {
            sheets.each(wanted, output.to(), dpi, progress(), this::keep);
        }
    }

    private void keep(String name, SheetFiles.SheetContent content) throws FileProblem, IOException {
        output.take(name, content::writeTo);
    }

    /** From the program's own folder, so that none are left behind in the temporary one. */
    private static Fonts fonts() {
        return Fonts.keptIn(UserFolder.fonts());
    }

    private SheetForm form() {
        return form != null ? form : SheetForm.named(output.to()).orElseGet(this::unnamed);
    }

    /** Nobody who writes “.docx” expects plain text. */
    private SheetForm unnamed() {
        String ending = FileEnding.of(output.to());
        if (ending.isEmpty()) {
            return SheetForm.TEXT;
        }
        String known = Stream.of(SheetForm.values()).map(SheetForm::ending).collect(Collectors.joining(", "));
        throw new ParameterException(
                commands.asked("sheet"),
                Said.of("sheet.ending", Map.of("name", output.to(), "ending", ending, "known", known)));
    }

    private Progress progress() {
        return output.quiet()
                ? Progress.UNWATCHED
                : TerminalProgress.on(commands.console().err());
    }

    private Set<SheetSection> sections() {
        List<SheetSection> sections = new ArrayList<>();
        for (String part : parts) {
            sections.add(Stream.of(SheetSection.values())
                    .filter(section -> section.key().equals(part.strip().toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> unknown(part)));
        }
        return SheetSection.of(sections);
    }

    private ParameterException unknown(String part) {
        String known = Stream.of(SheetSection.values()).map(SheetSection::key).collect(Collectors.joining(", "));
        return new ParameterException(
                commands.asked("sheet"), Said.of("sheet.parts", Map.of("part", part, "known", known)));
    }

    private PageSetup setup() {
        setup("--margin", PageSetup.USUAL_DISTANCE);
        return setup("--distance", distance);
    }

    /** What the pages' setup refuses was asked wrongly, by that option. */
    private PageSetup setup(String option, double away) {
        try {
            return new PageSetup(paper, landscape, margin, away);
        } catch (IllegalArgumentException refusal) {
            String why = Said.of("asked.value", Map.of("option", option, "why", refusal.getMessage()));
            throw new ParameterException(commands.asked("sheet"), why, refusal);
        }
    }
}

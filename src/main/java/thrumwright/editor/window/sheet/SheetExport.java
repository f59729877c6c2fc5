package thrumwright.editor.window.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import thrumwright.drawing.Fonts;
import thrumwright.editor.files.SheetTarget;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.JobBar;
import thrumwright.measure.Refused;
import thrumwright.output.ClassSheets;
import thrumwright.output.SheetFiles;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetLook;
import thrumwright.output.WrittenAt;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.store.NewFiles;

/** Writes a step sheet into files, all of them or, if that is stopped, none. */
public record SheetExport(Texts texts, Fonts fonts, JobBar jobs, Messages messages) {
    /** Makes the files of a sheet, or of several. */
    private interface Making {
        void make(Progress progress, SheetFiles.Taker<FileProblem> files) throws IOException, FileProblem;
    }

    /** Goes on with pages as soon as they are made, unless the weaver doesn't want to wait for them. */
    void whenMade(Future<SheetPages> made, Consumer<SheetPages> then) {
        messages.clear();
        jobs.after(made, ended -> {
            if (ended.thrown() == null) {
                then.accept(ended.result());
            } else {
                problem(ended.thrown());
            }
        });
    }

    public void write(Plan plan, SheetLook look, SheetTarget target) {
        SheetFiles writer = new SheetFiles(plan, look.written(WrittenAt.now()), () -> fonts, Locale.UK);
        write(
                target.form() == SheetForm.HTML ? "job.part" : "job.page",
                target.path(),
                (progress, files) ->
                        writer.write(target.form(), name(target.path()), SheetFiles.USUAL_DPI, progress, files),
                count -> said(target, count));
    }

    /** @param each whether every loom gets a file of its own, whose name begins as the path's does */
    public void write(ClassSheets sheets, boolean each, Path path) {
        write(
                "job.sheet",
                path,
                (progress, files) -> {
                    if (each) {
                        sheets.each(SheetForm.PDF, name(path), SheetFiles.USUAL_DPI, progress, files);
                    } else {
                        sheets.together(SheetForm.PDF, name(path), SheetFiles.USUAL_DPI, progress, files);
                    }
                },
                count -> texts.say(
                        each ? "message.class.sheets" : "message.class.sheet",
                        Map.of(
                                "count",
                                count,
                                "file",
                                each
                                        ? path.resolveSibling(sheets.names(SheetForm.PDF, name(path))
                                                .get(0))
                                        : path)));
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }

    /** Everything is whole before anything takes its place, so that nothing lies about if the weaver stops it. */
    private void write(String key, Path path, Making making, IntFunction<String> said) {
        messages.clear();
        jobs.run(
                key,
                progress -> {
                    try (NewFiles files = new NewFiles()) {
                        making.make(
                                progress, (name, content) -> files.add(path.resolveSibling(name), content::writeTo));
                        return files.keep();
                    }
                },
                ended -> say(ended, said));
    }

    private void say(JobBar.Ended<Integer> ended, IntFunction<String> said) {
        if (ended.thrown() == null) {
            messages.say(said.apply(ended.result()));
        } else {
            problem(ended.thrown());
        }
    }

    private void problem(Exception thrown) {
        if (thrown instanceof Stopped) {
            messages.say(texts.say("message.sheet.stopped"));
        } else if (thrown instanceof Refused) {
            messages.problem(thrown.getMessage());
        } else if (thrown instanceof FileProblem problem) {
            messages.problem(texts.say("message.no-sheet", Map.of("why", problem.getMessage())));
        } else if (thrown instanceof RuntimeException fault) {
            throw fault;
        } else if (thrown.getCause() instanceof Error fault) {
            throw fault;
        } else {
            messages.problem(texts.say("message.sheet-fails", Map.of("why", String.valueOf(thrown.getMessage()))));
        }
    }

    private String said(SheetTarget target, int count) {
        return target.form().paged()
                ? texts.say(
                        "message.sheets",
                        Map.of("count", count, "first", target.files(1).get(0).toString()))
                : texts.say("message.sheet", Map.of("file", target.path().toString()));
    }
}

package thrumwright.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thrumwright.drawing.Fonts;
import thrumwright.editor.text.Texts;
import thrumwright.output.Progress;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetWriter;
import thrumwright.output.Stopped;
import thrumwright.plan.Plan;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** Writes a step sheet into files, all of them or, if that is stopped, none. */
final class SheetExport {
    private final Texts texts;
    private final Fonts fonts;
    private final JobBar jobs;
    private final MessageBar messages;

    SheetExport(Texts texts, Fonts fonts, JobBar jobs, MessageBar messages) {
        this.texts = texts;
        this.fonts = fonts;
        this.jobs = jobs;
        this.messages = messages;
    }

    private record Made(Path file, byte[] bytes) {}

    void write(Plan plan, SheetLook look, SheetTarget target) {
        messages.clear();
        jobs.run(
                target.form() == SheetForm.HTML ? "job.part" : "job.page",
                progress -> {
                    List<Made> files = make(plan, look, target, progress);
                    for (Made file : files) {
                        SafeFile.write(file.file(), file.bytes());
                    }
                    return files.size();
                },
                ended -> say(target, ended));
    }

    /** Everything is made before anything is written, so that nothing lies about if the weaver stops it. */
    private List<Made> make(Plan plan, SheetLook look, SheetTarget target, Progress progress) throws IOException {
        List<Made> files = new ArrayList<>();
        new SheetWriter(plan, look, () -> fonts, Locale.UK)
                .write(
                        target.form(),
                        String.valueOf(target.path().getFileName()),
                        SheetWriter.USUAL_DPI,
                        progress,
                        (name, bytes) -> files.add(new Made(target.path().resolveSibling(name), bytes)));
        return files;
    }

    private void say(SheetTarget target, JobBar.Ended<Integer> ended) {
        if (ended.thrown() instanceof Stopped) {
            messages.say(texts.say("message.sheet.stopped"));
        } else if (ended.thrown() instanceof FileProblem problem) {
            messages.problem(texts.say("message.no-sheet", Map.of("why", problem.getMessage())));
        } else if (ended.thrown() instanceof RuntimeException fault) {
            throw fault;
        } else if (ended.thrown() != null) {
            messages.problem(texts.say(
                    "message.sheet-fails",
                    Map.of("why", String.valueOf(ended.thrown().getMessage()))));
        } else if (target.form().paged()) {
            messages.say(texts.say(
                    "message.sheets",
                    Map.of(
                            "count", ended.result(),
                            "first", target.files(1).get(0).toString())));
        } else {
            messages.say(texts.say("message.sheet", Map.of("file", target.path().toString())));
        }
    }
}

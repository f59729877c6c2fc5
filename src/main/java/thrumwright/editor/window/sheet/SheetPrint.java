package thrumwright.editor.window.sheet;

import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterJob;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;
import javax.print.PrintService;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.JobName;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaPrintableArea;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.OrientationRequested;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.JobBar;
import thrumwright.output.PrintPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;

/** Prints a step sheet, at true size and on the paper for which it is laid out. */
public final class SheetPrint {
    /** Paper sizes nearer than this are the same, mm. */
    private static final double SAME_PAPER = 1;

    private final Texts texts;
    private final JobBar jobs;
    private final Messages messages;
    private Printers printers;

    SheetPrint(Texts texts, JobBar jobs, Messages messages, Printers printers) {
        this.texts = texts;
        this.jobs = jobs;
        this.messages = messages;
        this.printers = printers;
    }

    /** Prints elsewhere. */
    public void setPrinters(Printers other) {
        printers = other;
    }

    private record Found(PrinterJob job, SheetPages pages) {}

    /** Asks for a printer as soon as the pages are made, and prints them unless the weaver thinks better of it. */
    void print(Future<SheetPages> made) {
        messages.clear();
        jobs.run(
                "print.page",
                progress -> {
                    SheetPages pages = JobBar.await(made, progress);
                    PrinterJob job = printers.job();
                    if (progress.stopping()) {
                        throw new Stopped();
                    }
                    return new Found(job, pages);
                },
                found -> {
                    if (found.thrown() == null) {
                        choose(found.result().job(), found.result().pages());
                    } else {
                        problem(found.thrown());
                    }
                });
    }

    private void choose(PrinterJob job, SheetPages pages) {
        PrintRequestAttributeSet attributes = new HashPrintRequestAttributeSet();
        MediaSizeName paper = media(pages.setup().paper());
        attributes.add(paper);
        attributes.add(orientation(pages.setup()));
        attributes.add(new JobName(pages.title(), null));
        job.setJobName(pages.title());
        // so that the dialog knows how many pages there are
        job.setPageable(new PrintPages(pages, Progress.UNWATCHED));
        if (!printers.choose(job, attributes)) {
            return;
        }
        if (other((Media) attributes.get(Media.class), paper)) {
            messages.problem(texts.say(
                    "print.other-paper",
                    Map.of("paper", texts.name("paper", pages.setup().paper()))));
            return;
        }
        attributes.add(paper);
        attributes.add(orientation(pages.setup()));
        attributes.remove(MediaPrintableArea.class);
        begin(job, attributes, pages);
    }

    private void begin(PrinterJob job, PrintRequestAttributeSet attributes, SheetPages pages) {
        jobs.run(
                "print.page",
                progress -> {
                    job.setPageable(new PrintPages(pages, progress));
                    job.print(attributes);
                    return job.getPrintService();
                },
                ended -> {
                    if (ended.thrown() == null) {
                        messages.say(sent(ended.result(), pages));
                    } else {
                        problem(ended.thrown());
                    }
                });
    }

    private void problem(Exception thrown) {
        if (thrown instanceof PrinterAbortException || thrown instanceof Stopped) {
            messages.say(texts.say("print.stopped"));
        } else if (thrown instanceof RuntimeException fault) {
            throw fault;
        } else if (thrown.getCause() instanceof Error fault) {
            throw fault;
        } else {
            messages.problem(texts.say("print.failed", Map.of("why", String.valueOf(thrown.getMessage()))));
        }
    }

    private String sent(PrintService printer, SheetPages pages) {
        String sent = texts.say("print.sent", Map.of("printer", printer.getName(), "page", pages.count()));
        return unreachable(printer, pages.setup())
                .map(edge -> sent + " "
                        + texts.say(
                                "print.edges",
                                Map.of(
                                        "edge", Math.ceil(edge),
                                        "margin", pages.setup().margin())))
                .orElse(sent);
    }

    /** What a printer leaves free at the widest edge, mm, if that is more than the margins. */
    private static Optional<Double> unreachable(PrintService printer, PageSetup setup) {
        PrintRequestAttributeSet wanted = new HashPrintRequestAttributeSet(media(setup.paper()));
        Object areas = printer.getSupportedAttributeValues(MediaPrintableArea.class, null, wanted);
        if (!(areas instanceof MediaPrintableArea[] all) || all.length == 0) {
            return Optional.empty();
        }
        MediaPrintableArea area = all[0];
        int mm = MediaPrintableArea.MM;
        MediaSize size = MediaSize.getMediaSizeForName(media(setup.paper()));
        double edge = Math.max(
                Math.max(area.getX(mm), area.getY(mm)),
                Math.max(
                        size.getX(mm) - area.getX(mm) - area.getWidth(mm),
                        size.getY(mm) - area.getY(mm) - area.getHeight(mm)));
        return edge > setup.margin() + 0.1 ? Optional.of(edge) : Optional.empty();
    }

    private static boolean other(Media chosen, MediaSizeName wanted) {
        if (!(chosen instanceof MediaSizeName name)) {
            return false;
        }
        MediaSize size = MediaSize.getMediaSizeForName(name);
        MediaSize own = MediaSize.getMediaSizeForName(wanted);
        return size != null
                && (Math.abs(size.getX(MediaSize.MM) - own.getX(MediaSize.MM)) > SAME_PAPER
                        || Math.abs(size.getY(MediaSize.MM) - own.getY(MediaSize.MM)) > SAME_PAPER);
    }

    private static OrientationRequested orientation(PageSetup setup) {
        return setup.landscape() ? OrientationRequested.LANDSCAPE : OrientationRequested.PORTRAIT;
    }

    private static MediaSizeName media(Paper paper) {
        return switch (paper) {
            case A4 -> MediaSizeName.ISO_A4;
            case LETTER -> MediaSizeName.NA_LETTER;
            case A3 -> MediaSizeName.ISO_A3;
            case TABLOID -> MediaSizeName.TABLOID;
        };
    }
}

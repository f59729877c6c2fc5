package thrumwright.output.pdf;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import thrumwright.output.page.Imprint;
import thrumwright.output.page.Progress;
import thrumwright.output.page.Role;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.SheetSource;
import thrumwright.output.page.Stopped;

/**
 * Writes laid-out pages as a PDF with embedded fonts, tagged for those who hear it read, and fit to be kept (PDF/UA-1,
 * ISO 14289-1; PDF/A-2a, ISO 19005-2); the same pages make the same bytes. Pages are written as they come, so that a whole
 * class's sheets need hardly more memory than one; they are packed and written on a thread of their own.
 */
public final class PdfFile implements Closeable {
    /** Of pages that don't say when they were written. */
    private static final ZonedDateTime UNDATED = Instant.EPOCH.atZone(ZoneOffset.UTC);

    private final ExecutorService beside = Executors.newSingleThreadExecutor(PdfFile::thread);
    private final PDDocument rest = new PDDocument();
    private String title = "";
    private final PdfObjects objects;
    private final PdfStructure structure;
    private final PdfFonts fonts;
    private final PdfCopy copy;
    private final PdfBookmarks bookmarks = new PdfBookmarks();
    private final PdfContent content;
    private final PdfBytes body = new PdfBytes(1 << 10);
    private final PdfBytes pages = new PdfBytes(1 << 10);
    private final int pageTree;
    private final int fontNames;
    private int count;
    private Optional<ZonedDateTime> written = Optional.empty();

    /**
     * Begins a file of several sheets.
     *
     * @param title of the whole
     * @param out stays open
     * @throws IOException if it can't be written to
     */
    public PdfFile(String title, OutputStream out) throws IOException {
        this(out);
        this.title = title;
    }

    private PdfFile(OutputStream out) throws IOException {
        this.objects = new PdfObjects(out, beside);
        this.structure = new PdfStructure(objects);
        this.fonts = new PdfFonts(rest, beside);
        this.copy = new PdfCopy(objects);
        this.pageTree = objects.reserve();
        this.fontNames = objects.reserve();
        this.content = new PdfContent(new PdfForms(objects, fontNames));
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "pdf");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * @param out stays open
     * @throws IOException if it can't be written to
     */
    public static void write(SheetPages pages, OutputStream out) throws IOException {
        write(() -> pages, out, Progress.UNWATCHED);
    }

    /**
     * As {@link #write(SheetPages, OutputStream)}.
     *
     * @param pages laid out here, while fonts are read
     * @param progress is told of every page
     * @throws Stopped if it is asked to stop; what was written until then is no whole file
     * @throws IOException if it can't be written to
     */
    public static void write(Supplier<SheetPages> pages, OutputStream out, Progress progress) throws IOException {
        try (PdfFile file = new PdfFile(out)) {
            SheetPages laidOut = pages.get();
            file.title = laidOut.title();
            file.addPages(laidOut, progress, false);
            file.finish();
        }
    }

    /**
     * Several sheets as one file, each with a bookmark.
     *
     * @param title of the whole
     * @param out stays open
     * @param progress is told of every sheet
     * @throws Stopped if it is asked to stop; what was written until then is no whole file
     * @throws IOException if it can't be written to
     */
    public static void write(String title, SheetSource sheets, OutputStream out, Progress progress) throws IOException {
        try (PdfFile file = new PdfFile(title, out)) {
            for (int i = 0; i < sheets.count(); i++) {
                progress.reached(i, sheets.count());
                file.add(sheets.sheet(i), Progress.UNWATCHED);
            }
            progress.reached(sheets.count(), sheets.count());
            file.finish();
        }
    }

    /**
     * Writes all pages of a sheet, with a bookmark for it.
     *
     * @param progress is told of every page
     * @throws Stopped if it is asked to stop
     * @throws IOException if they can't be written
     */
    public void add(SheetPages sheet, Progress progress) throws IOException {
        structure.open(Role.SHEET);
        addPages(sheet, progress, true);
        structure.close();
    }

    /** @param named whether the sheet has a bookmark of its own */
    private void addPages(SheetPages sheet, Progress progress, boolean named) throws IOException {
        if (written.isEmpty()) {
            written = sheet.imprint().map(Imprint::written);
        }
        for (int i = 0; i < sheet.count(); i++) {
            progress.reached(i, sheet.count());
            add(sheet, i, named && i == 0);
        }
        progress.reached(sheet.count(), sheet.count());
    }

    private void add(SheetPages sheet, int number, boolean named) throws IOException {
        double height = sheet.setup().height();
        int page = objects.reserve();
        int stream = objects.reserve();
        int marks = structure.page(page);
        if (named) {
            bookmarks.add(Role.SHEET, sheet.title(), page, height);
        }
        content.begin();
        try {
            sheet.paint(
                    new PdfCanvas(content, new PdfMarks(content, structure, bookmarks, height), fonts, height), number);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        structure.endPage();
        objects.stream(stream, "", content.end());
        body.clear();
        body.add("<</Type/Page/Parent ").reference(pageTree).add("/MediaBox[0 0 ");
        body.number(sheet.setup().width()).number(height);
        body.add("]/Resources<</Font ").reference(fontNames);
        PdfForms.names(body, content.named());
        body.add(">>/Contents ")
                .reference(stream)
                .add("/StructParents ")
                .add((long) marks)
                .add("/Tabs/S>>");
        objects.small(page, body);
        pages.reference(page).add(' ');
        count++;
    }

    /**
     * Writes what belongs to all pages; without it there is no whole file.
     *
     * @throws IOException if it can't be written
     */
    public void finish() throws IOException {
        structure.finish();
        body.clear();
        body.add("<</Type/Pages/Count ")
                .add((long) count)
                .add("/Kids[")
                .add(pages)
                .add("]>>");
        objects.small(pageTree, body);
        copy.write(fonts.embedded(), fontNames);
        PdfDescription.describe(rest, title, written.orElse(UNDATED));
        COSDictionary catalog = rest.getDocumentCatalog().getCOSObject();
        catalog.setItem(COSName.PAGES, copy.known(pageTree));
        catalog.setItem(COSName.STRUCT_TREE_ROOT, copy.known(structure.root()));
        if (bookmarks.any()) {
            catalog.setItem(COSName.OUTLINES, copy.known(bookmarks.write(objects)));
        }
        int root = copy.write(catalog);
        objects.finish(root, copy.write(rest.getDocumentInformation().getCOSObject()));
    }

    /** Lets go of what it holds; nothing is written any more once this returns. */
    @Override
    public void close() throws IOException {
        objects.close();
        // whatever is still being read
        CompletableFuture.runAsync(() -> {}, beside).join();
        beside.shutdown();
        rest.close();
    }
}

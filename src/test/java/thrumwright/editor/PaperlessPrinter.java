package thrumwright.editor;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.StreamPrintServiceFactory;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.MediaSizeName;
import javax.print.attribute.standard.PageRanges;
import thrumwright.editor.window.sheet.Printers;

/** A printer that paints every page as a real one does, and throws the paper away. */
final class PaperlessPrinter implements Printers {
    /** The pages that were printed, from 0, and on which paper. */
    final List<Integer> printed = new ArrayList<>();

    final List<PageFormat> formats = new ArrayList<>();
    /** What the weaver answers. */
    boolean agrees = true;

    MediaSizeName chosen;
    PageRanges range;
    IntConsumer beforePage = page -> {};
    /** What the printer was asked for. */
    PrintRequestAttributeSet asked;

    @Override
    public PrinterJob job() {
        return new Job();
    }

    @Override
    public boolean choose(PrinterJob job, PrintRequestAttributeSet attributes) {
        asked = attributes;
        if (chosen != null) {
            attributes.add(chosen);
        }
        if (range != null) {
            attributes.add(range);
        }
        return agrees;
    }

    private final class Job extends PrinterJob {
        private Pageable document;
        private String name = "";

        @Override
        public void print() throws PrinterException {
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                if (range == null || range.contains(page + 1)) {
                    beforePage.accept(page);
                    paint(page);
                }
            }
        }

        @Override
        public void print(PrintRequestAttributeSet attributes) throws PrinterException {
            print();
        }

        /** Twice, as printers do that look first at what is on a page. */
        private void paint(int page) throws PrinterException {
            PageFormat format = document.getPageFormat(page);
            BufferedImage paper =
                    new BufferedImage((int) format.getWidth(), (int) format.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
            for (int time = 0; time < 2; time++) {
                Graphics2D g = paper.createGraphics();
                if (document.getPrintable(page).print(g, format, page) != Printable.PAGE_EXISTS) {
                    throw new AssertionError("there is no page " + page);
                }
                g.dispose();
            }
            printed.add(page);
            formats.add(format);
        }

        @Override
        public PrintService getPrintService() {
            return StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                    DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
                    .getPrintService(OutputStream.nullOutputStream());
        }

        @Override
        public void setPageable(Pageable pageable) {
            document = pageable;
        }

        @Override
        public void setJobName(String jobName) {
            name = jobName;
        }

        @Override
        public String getJobName() {
            return name;
        }

        @Override
        public boolean printDialog() {
            return agrees;
        }

        @Override
        public PageFormat pageDialog(PageFormat page) {
            return page;
        }

        @Override
        public PageFormat defaultPage(PageFormat page) {
            return page;
        }

        @Override
        public PageFormat validatePage(PageFormat page) {
            return page;
        }

        @Override
        public void setPrintable(Printable painter) {
            throw new UnsupportedOperationException("a sheet is a document of pages");
        }

        @Override
        public void setPrintable(Printable painter, PageFormat format) {
            setPrintable(painter);
        }

        @Override
        public void setCopies(int copies) {
            // There is no paper to copy on.
        }

        @Override
        public int getCopies() {
            return 1;
        }

        @Override
        public String getUserName() {
            return "";
        }

        @Override
        public void cancel() {
            // Pages are asked before each whether to go on.
        }

        @Override
        public boolean isCancelled() {
            return false;
        }
    }
}

package thrumwright.output;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import thrumwright.output.page.Paper;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Progress;
import thrumwright.output.page.SheetPages;
import thrumwright.output.page.Stopped;

/**
 * Laid-out pages for a printer, at true size: the whole paper is theirs, since they keep their own margins, and nothing is
 * scaled to what a printer can reach.
 *
 * @param progress is told of every page that is begun; printing that is asked to stop is aborted
 */
public record PrintPages(SheetPages pages, Progress progress) implements Pageable, Printable {
    @Override
    public int getNumberOfPages() {
        return pages.count();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        checked(page);
        Paper size = pages.setup().paper();
        java.awt.print.Paper paper = new java.awt.print.Paper();
        paper.setSize(size.width(), size.height());
        paper.setImageableArea(0, 0, size.width(), size.height());
        PageFormat format = new PageFormat();
        format.setPaper(paper);
        format.setOrientation(pages.setup().landscape() ? PageFormat.LANDSCAPE : PageFormat.PORTRAIT);
        return format;
    }

    @Override
    public Printable getPrintable(int page) {
        checked(page);
        return this;
    }

    private void checked(int page) {
        if (page < 0 || page >= pages.count()) {
            throw new IndexOutOfBoundsException("there is no page " + page);
        }
    }

    /** Called any number of times for each page, as a printer paints in bands. */
    @Override
    public int print(Graphics g, PageFormat format, int page) throws PrinterException {
        if (page >= pages.count()) {
            return NO_SUCH_PAGE;
        }
        try {
            progress.reached(page, pages.count());
        } catch (Stopped stopped) {
            PrinterException abort = new PrinterAbortException(stopped.getMessage());
            abort.initCause(stopped);
            throw abort;
        }
        Graphics2D own = (Graphics2D) g.create();
        PngFile.smooth(own);
        pages.paint(own, page);
        own.dispose();
        return PAGE_EXISTS;
    }
}

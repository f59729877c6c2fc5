package thrumwright.editor.window.sheet;

import java.awt.HeadlessException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import javax.print.attribute.PrintRequestAttributeSet;

/** The printers that there are, and the choice among them. */
public interface Printers {
    /** A job for one of them; it may take the system some time to find them. */
    PrinterJob job() throws PrinterException;

    /**
     * Lets the weaver choose printer, pages and copies.
     *
     * @param attributes what is wanted; afterwards what was chosen
     * @return whether to print
     */
    boolean choose(PrinterJob job, PrintRequestAttributeSet attributes) throws HeadlessException;
}

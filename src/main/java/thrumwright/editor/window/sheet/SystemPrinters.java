package thrumwright.editor.window.sheet;

import java.awt.Window;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import javax.print.attribute.PrintRequestAttributeSet;
import javax.print.attribute.standard.DialogOwner;
import javax.print.attribute.standard.DialogTypeSelection;
import thrumwright.editor.text.Texts;

/**
 * The printers of this system, and its own dialog where Java can open that.
 *
 * @param owner of the dialog
 */
record SystemPrinters(Texts texts, Window owner) implements Printers {
    @Override
    public PrinterJob job() throws PrinterException {
        PrinterJob job = PrinterJob.getPrinterJob();
        if (job.getPrintService() == null) {
            throw new PrinterException(texts.say("print.no-printer"));
        }
        return job;
    }

    @Override
    public boolean choose(PrinterJob job, PrintRequestAttributeSet attributes) {
        attributes.add(
                ownDialog(System.getProperty("os.name")) ? DialogTypeSelection.NATIVE : DialogTypeSelection.COMMON);
        attributes.add(new DialogOwner(owner));
        return job.printDialog(attributes);
    }

    /** On other systems Java has only its own dialog, and forgets what is wanted when it is asked for theirs. */
    private static boolean ownDialog(String system) {
        return system.startsWith("Windows") || system.startsWith("Mac");
    }
}

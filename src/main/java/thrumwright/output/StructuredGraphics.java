package thrumwright.output;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DFontTextDrawer;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.AttributedCharacterIterator;
import java.util.function.IntSupplier;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;

/** Paints a page of a PDF and marks every stretch of it with its element in the structure tree. */
final class StructuredGraphics extends PdfBoxGraphics2D implements Structured {
    private static final COSName ARTIFACT = COSName.getPDFName(Role.ORNAMENT.type());

    private final PDPage page;
    private final PdfStructure structure;
    private final PDPageContentStream content;
    private boolean marked;
    private boolean spoken;

    StructuredGraphics(PDDocument document, PDPage page, PdfStructure structure, IPdfBoxGraphics2DFontTextDrawer texts)
            throws IOException {
        super(document, page.getMediaBox().getWidth(), page.getMediaBox().getHeight());
        this.page = page;
        this.structure = structure;
        this.content = ContentFinder.contentOf(this);
        setFontTextDrawer(texts);
        structure.page(page);
        content.beginMarkedContent(ARTIFACT);
    }

    @Override
    public void as(Role role, Runnable paint) {
        if (marked) {
            paint.run();
        } else if (role.holdsOthers()) {
            structure.open(role);
            paint.run();
            structure.close();
        } else if (role == Role.ORNAMENT) {
            marked = true;
            paint.run();
            marked = false;
        } else {
            mark(role, () -> structure.mark(role), paint);
        }
    }

    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        if (marked) {
            paint.run();
            return;
        }
        double bottom = page.getMediaBox().getHeight() - box.getMaxY();
        PDRectangle upright =
                new PDRectangle((float) box.getMinX(), (float) bottom, (float) box.getWidth(), (float) box.getHeight());
        mark(Role.FIGURE, () -> structure.figure(alternative, upright), paint);
    }

    @Override
    public void spell(String text) {
        if (spoken) {
            structure.spell(text);
        }
    }

    private void mark(Role role, IntSupplier number, Runnable paint) {
        try {
            content.endMarkedContent();
            content.beginMarkedContent(COSName.getPDFName(role.type()), number.getAsInt());
            marked = true;
            spoken = role != Role.FIGURE;
            paint.run();
            spoken = false;
            marked = false;
            content.endMarkedContent();
            content.beginMarkedContent(ARTIFACT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Ends the painting and makes it the page's own content, so that its marks are the page's. */
    void finish() throws IOException {
        content.endMarkedContent();
        dispose();
        COSStream stream = getXFormObject().getCOSObject();
        page.setResources(getResources());
        for (COSName key : new COSName[] {
            COSName.TYPE, COSName.SUBTYPE, COSName.BBOX, COSName.RESOURCES, COSName.FORMTYPE, COSName.MATRIX
        }) {
            stream.removeItem(key);
        }
        page.setContents(new PDStream(stream));
    }

    /** Reaches the stream that a canvas writes to, which it shows to those that draw its texts. */
    private static final class ContentFinder extends PdfBoxGraphics2DFontTextDrawer {
        private PDPageContentStream found;

        static PDPageContentStream contentOf(PdfBoxGraphics2D g) {
            ContentFinder finder = new ContentFinder();
            g.setFontTextDrawer(finder);
            g.setColor(Color.BLACK);
            g.drawString("x", 0, 0);
            return finder.found;
        }

        @Override
        public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv env) {
            return true;
        }

        @Override
        public void drawText(AttributedCharacterIterator text, IFontTextDrawerEnv env) {
            found = env.getContentStream();
        }
    }
}

package thrumwright.output.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;

/** Marks every stretch of a page with its element in the structure tree. */
final class PdfMarks implements Structured {
    private final PdfContent content;
    private final PdfStructure structure;
    private final PdfBookmarks bookmarks;
    private final double height;
    /** The words of a heading, as they come. */
    private final StringBuilder heading = new StringBuilder();

    private double top;
    private boolean marked;
    private boolean spoken;

    /** @param height of the page, points */
    PdfMarks(PdfContent content, PdfStructure structure, PdfBookmarks bookmarks, double height) {
        this.content = content;
        this.structure = structure;
        this.bookmarks = bookmarks;
        this.height = height;
    }

    @FunctionalInterface
    private interface Marking {
        int number() throws IOException;
    }

    @Override
    public void as(Role role, Runnable paint) {
        if (marked) {
            paint.run();
        } else if (role.holdsOthers()) {
            within(role, paint);
        } else if (role == Role.ORNAMENT) {
            marked = true;
            paint.run();
            marked = false;
        } else {
            mark(role, () -> structure.mark(role), paint);
            if (PdfBookmarks.keeps(role)) {
                bookmarks.add(role, heading.toString().strip(), structure.page(), top);
            }
        }
    }

    /** Letters are written, their tops so high on the page, points. */
    void written(String text, double upTo) {
        if (heading.isEmpty()) {
            top = upTo;
        } else if (heading.charAt(heading.length() - 1) != ' ') {
            heading.append(' ');
        }
        heading.append(text);
    }

    private void within(Role role, Runnable paint) {
        try {
            structure.open(role);
            paint.run();
            structure.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        if (marked) {
            paint.run();
            return;
        }
        Rectangle2D upright =
                new Rectangle2D.Double(box.getMinX(), height - box.getMaxY(), box.getWidth(), box.getHeight());
        mark(Role.FIGURE, () -> structure.figure(alternative, upright), () -> {
            content.beginDrawing(upright.getMinX(), upright.getMinY());
            paint.run();
            endDrawing();
        });
    }

    private void endDrawing() {
        try {
            content.endDrawing();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void spell(String text) {
        if (spoken) {
            structure.spell(text);
        }
    }

    private void mark(Role role, Marking marking, Runnable paint) {
        try {
            content.mark(role, marking.number());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        heading.setLength(0);
        marked = true;
        spoken = role != Role.FIGURE;
        paint.run();
        spoken = false;
        marked = false;
        content.unmark();
    }
}

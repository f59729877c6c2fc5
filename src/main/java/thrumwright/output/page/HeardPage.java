package thrumwright.output.page;

import java.awt.Graphics;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.text.AttributedCharacterIterator;
import org.apache.batik.ext.awt.g2d.DefaultGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** A canvas that keeps the words of a page only, in the order in which they are read, a line for every text. */
final class HeardPage extends DefaultGraphics2D implements Structured {
    private final StringBuilder words = new StringBuilder();
    private boolean spoken;
    private boolean spelt;

    HeardPage() {
        super(true);
        gc = new GraphicContext();
    }

    String words() {
        return words.toString().strip();
    }

    @Override
    public void as(Role role, Runnable paint) {
        if (role == Role.ORNAMENT) {
            return;
        }
        if (role.holdsOthers()) {
            paint.run();
            return;
        }
        boolean within = spoken;
        spoken = true;
        paint.run();
        spoken = within;
        if (!within) {
            end();
        }
    }

    private void end() {
        spelt = false;
        words.append('\n');
    }

    @Override
    public void figure(String alternative, Rectangle2D box, Runnable paint) {
        words.append(alternative).append('\n');
    }

    @Override
    public void spell(String text) {
        words.append(text);
        spelt = true;
    }

    @Override
    public void drawString(String text, float x, float y) {
        if (spoken && !spelt) {
            words.append(text);
        }
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        StringBuilder letters = new StringBuilder();
        for (char letter = text.first(); letter != AttributedCharacterIterator.DONE; letter = text.next()) {
            letters.append(letter);
        }
        drawString(letters.toString(), x, y);
    }

    @Override
    public void draw(Shape line) {
        // Nobody hears a line.
    }

    @Override
    public void fill(Shape area) {
        // Nobody hears an area.
    }

    @Override
    public Graphics create() {
        return this;
    }

    @Override
    public void dispose() {
        // It is the only one, however often it was created.
    }
}

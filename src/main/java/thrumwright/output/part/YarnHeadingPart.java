package thrumwright.output.part;

import java.awt.Graphics2D;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.yarn.Colour;

/** A heading with a dot in a yarn's colour, if it is about a yarn. */
public record YarnHeadingPart(String text, Optional<Colour> colour, Type type, Palette palette) implements Part {
    private static final double ROOM = 18;

    private Part words() {
        return Structured.part(Role.STEP, new TextPart(text, type.strong(), palette.ink()));
    }

    @Override
    public double height(double width) {
        return words().height(width - ROOM);
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        colour.ifPresent(its -> TickMarks.dot(g, x + 1, y + 3, 10, its, palette));
        words().paint(g, x + ROOM, y, width - ROOM);
    }
}

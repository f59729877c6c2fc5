package thrumwright.output.part;

import java.awt.Graphics2D;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;
import thrumwright.sheet.Fact;

/** A named value: the name at the left, the value beside it. */
public record FactPart(Fact fact, Type type, Palette palette) implements Part {
    private static final double NAMES = 118;
    private static final double GAP = 4;

    private Part name() {
        return new TextPart(fact.name(), type.body(), palette.faint());
    }

    private Part value() {
        return new TextPart(fact.value(), type.body(), palette.ink());
    }

    @Override
    public double height(double width) {
        return Math.max(name().height(NAMES - GAP), value().height(width - NAMES));
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width) {
        Structured.as(g, Role.LIST, () -> Structured.as(g, Role.ITEM, () -> item(g, x, y, width)));
    }

    private void item(Graphics2D g, double x, double y, double width) {
        Structured.part(Role.LABEL, name()).paint(g, x, y, NAMES - GAP);
        Structured.part(Role.ENTRY, value()).paint(g, x + NAMES, y, width - NAMES);
    }
}

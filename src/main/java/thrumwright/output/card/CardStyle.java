package thrumwright.output.card;

import java.awt.Font;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Type;

/** The type of a card: what is read from afar stands at least as high as the distance asks. */
record CardStyle(Type type, Palette palette, CardForm form, TextWidths widths) {
    /** From one large line to the next, times the type size: ascenders and descenders just clear each other. */
    private static final double PITCH = 0.95;
    /** Down to the letters' line, times the type size. */
    private static final double ASCENT = 0.74;

    /** Figures of this font are a little lower than its capitals (measured on its 1), and they matter most. */
    private static final double FIGURES = Type.CAPITAL / 0.635;

    private static final float SMALL = 10;
    private static final double SMALL_PITCH = 1.15;

    double large() {
        return type.large() * FIGURES * form.scale();
    }

    /** Of names and numbers. */
    Font name() {
        return type.fonts().bold().deriveFont((float) large());
    }

    /** Of whatever else is read from afar. */
    Font word() {
        return type.fonts().semibold().deriveFont((float) large());
    }

    Font small() {
        return type.small();
    }

    Font strong() {
        return type.fonts().semibold().deriveFont(SMALL + 0.5f);
    }

    /** Height of a large line, points. */
    double line() {
        return large() * PITCH;
    }

    double baseline() {
        return large() * ASCENT;
    }

    /** Between large words, points. */
    double space() {
        return large() * (form.lines() == CardForm.Lines.ONE ? 0.3 : 0.36);
    }

    /** From one small line to the next, points. */
    double smallLine() {
        return strong().getSize2D() * SMALL_PITCH;
    }

    double width(String text, Font font) {
        return widths.of(text, font);
    }
}

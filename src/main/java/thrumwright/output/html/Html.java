package thrumwright.output.html;

import java.awt.Color;
import java.io.IOException;
import java.io.Writer;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import thrumwright.output.page.Markup;
import thrumwright.output.svg.SvgCanvas;
import thrumwright.output.svg.SvgSymbols;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/** Writes HTML, line by line; texts are always escaped. */
final class Html {
    private final StringBuilder text = new StringBuilder();
    private final SvgSymbols symbols = SvgSymbols.inPage();
    private final Map<Drawn, String> drawn = new HashMap<>();
    private final Map<Plan, Integer> plans = new IdentityHashMap<>();

    /**
     * A drawing.
     *
     * @param from all that it follows from: a plan by its number, or less where another plan's may look the same
     * @param sort what of it is drawn
     * @param block of which block in which end
     * @param index which of several
     */
    record Drawn(Object from, String sort, Optional<Place> place, String block, int index) {}

    /** What stands in an SVG element, how large it is, units, and how many CSS pixels a unit is, more than 0. */
    record Embedded(Drawn what, String drawing, int width, int height, double enlarged) {
        private long shown(int units) {
            return Math.round(units * enlarged);
        }
    }

    /** Of all drawings on the page. */
    SvgSymbols symbols() {
        return symbols;
    }

    /** What stands for a plan; comparing them would take longer than drawing. */
    int number(Plan plan) {
        return plans.computeIfAbsent(plan, fresh -> plans.size());
    }

    /** What draws the same again, if it has been drawn: many looms of a class weave the same. */
    Optional<String> again(Drawn what) {
        return Optional.ofNullable(drawn.get(what)).map(symbols::useWhole);
    }

    void raw(String markup) {
        text.append(markup);
    }

    void line(String element, String content) {
        line(element, "", content);
    }

    void line(String element, String kind, String content) {
        text.append(begin(element, kind)).append(Markup.escaped(content)).append(end(element));
    }

    /** A line with a box to tick. */
    void ticked(String element, String content) {
        text.append(begin(element, ""))
                .append("<label><input type=\"checkbox\"/>")
                .append(Markup.escaped(content))
                .append("</label>")
                .append(end(element));
    }

    /** A line behind a yarn's colour, if it has one. */
    void coloured(String element, Optional<Color> colour, String content) {
        text.append(begin(element, ""));
        colour.ifPresent(seen -> text.append("<span class=\"yarn\" style=\"background:#")
                .append(String.format("%06x", seen.getRGB() & 0xffffff))
                .append("\"></span> "));
        text.append(Markup.escaped(content)).append(end(element));
    }

    void within(String element, String kind, Runnable content) {
        text.append(begin(element, kind)).append('\n');
        content.run();
        text.append(end(element));
    }

    void picture(Embedded picture, String says) {
        picture(picture, says, "");
    }

    void picture(Embedded picture, String says, String caption) {
        within("figure", "", () -> {
            text.append("<svg role=\"img\" aria-label=\"").append(Markup.escaped(says));
            text.append("\" width=\"").append(picture.shown(picture.width()));
            text.append("\" height=\"").append(picture.shown(picture.height()));
            text.append("\" viewBox=\"0 0 ").append(picture.width()).append(' ').append(picture.height());
            text.append("\" ").append(SvgCanvas.USUAL).append(">\n");
            String id = symbols.figure(says, picture.width(), picture.height());
            drawn.putIfAbsent(picture.what(), id);
            text.append("<g id=\"").append(id).append("\">\n");
            text.append(picture.drawing()).append("</g></svg>\n");
            if (!caption.isEmpty()) {
                line("figcaption", caption);
            }
        });
    }

    private static String begin(String element, String kind) {
        return kind.isEmpty() ? "<" + element + ">" : "<" + element + " class=\"" + kind + "\">";
    }

    private static String end(String element) {
        return "</" + element + ">\n";
    }

    /** How much has been written so far. */
    int length() {
        return text.length();
    }

    /** Moves what was written since to where it stood before something else. */
    void bringForward(int since, int before) {
        String late = text.substring(since);
        text.setLength(since);
        text.insert(before, late);
    }

    /** Writes what there is so far, and forgets it. */
    void moveTo(Writer out) throws IOException {
        out.append(text);
        text.setLength(0);
    }

    @Override
    public String toString() {
        return symbols.trimmed(text.toString());
    }
}

package thrumwright.output.part;

import java.awt.Font;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Part;
import thrumwright.output.page.Role;
import thrumwright.output.page.Structured;
import thrumwright.output.page.TextPart;
import thrumwright.output.page.Type;

/** Makes the parts that all sections of a sheet have, in one type and one palette. */
public record PartMaker(Type type, Palette palette, Phrases phrases) {
    private static final float HEADING = 17;

    /** The head of all. */
    public Part title(String text) {
        return Structured.part(Role.TITLE, text(text, type.title()));
    }

    /** The head of a section. */
    public Part section(String text) {
        return Structured.part(Role.CHAPTER, text(text, type.title()));
    }

    /** The head of a list, by the key of its words. */
    public Part chapter(String key) {
        return Structured.part(Role.CHAPTER, heading(phrases.say(key)));
    }

    Part heading(String text) {
        return text(text, type.fonts().bold().deriveFont((float) (HEADING * Math.min(1, type.density()))));
    }

    /** Read from close by. */
    public Part body(String text) {
        return text(text, type.body());
    }

    /** An aside, faint and small. */
    public Part small(String text) {
        return new TextPart(text, type.small(), palette.faint());
    }

    /** What to take care of. */
    public Part caution(String text) {
        return new TextPart(phrases.say("caution.mark") + " " + text, type.aside(), palette.accent());
    }

    private Part text(String text, Font font) {
        return new TextPart(text, font, palette.ink());
    }

    /** Of parts one below the other: points, 0 or more, for a width in points, more than 0. */
    public static double height(List<? extends Part> parts, double width) {
        return parts.stream().mapToDouble(part -> part.height(width)).sum();
    }
}

package thrumwright.editor.window.sheet;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.sheet.SheetChoice;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetSection;
import thrumwright.output.page.Paper;

/**
 * How somebody likes a sheet, from one time to the next.
 *
 * @param locale says what is usual where nothing is remembered
 * @param units of the piece; margins and distance are remembered for each
 */
public record SheetSettings(Settings settings, Locale locale, UnitSystem units) {
    /** As it was the last time; whatever can't be read any more is as usual. */
    public SheetChoice choice() {
        SheetChoice usual = SheetChoice.usual(locale, units);
        try {
            return new SheetChoice(
                    settings.get("sheet.paper").map(Paper::valueOf).orElse(usual.paper()),
                    settings.get("sheet.landscape").map(Boolean::valueOf).orElse(usual.landscape()),
                    settings.get(own("sheet.margin")).map(Length::parse).orElse(usual.margin()),
                    settings.get(own("sheet.distance")).map(Length::parse).orElse(usual.distance()),
                    settings.get("sheet.coloured").map(Boolean::valueOf).orElse(usual.coloured()),
                    settings.get("sheet.sections").map(SheetSettings::sections).orElse(usual.sections()),
                    settings.get("sheet.done").map(Boolean::valueOf).orElse(usual.done()));
        } catch (IllegalArgumentException e) {
            return usual;
        }
    }

    void remember(SheetChoice choice) {
        Map<String, String> values = new HashMap<>();
        values.put("sheet.paper", choice.paper().name());
        values.put("sheet.landscape", String.valueOf(choice.landscape()));
        values.put("sheet.done", String.valueOf(choice.done()));
        values.put(own("sheet.margin"), choice.margin().text());
        values.put(own("sheet.distance"), choice.distance().text());
        values.put("sheet.coloured", String.valueOf(choice.coloured()));
        values.put(
                "sheet.sections",
                choice.sections().stream().map(SheetSection::key).collect(Collectors.joining(",")));
        settings.putAll(values);
    }

    private String own(String key) {
        return units == UnitSystem.INCHES ? key + ".inches" : key;
    }

    private static Set<SheetSection> sections(String keys) {
        return SheetSection.of(Stream.of(keys.split(","))
                .map(key -> SheetSection.valueOf(key.toUpperCase(Locale.ROOT)))
                .toList());
    }

    /** The form that was written the last time. */
    SheetForm form() {
        try {
            return settings.get("sheet.form").map(SheetForm::valueOf).orElse(SheetForm.PDF);
        } catch (IllegalArgumentException e) {
            return SheetForm.PDF;
        }
    }

    void remember(SheetForm form) {
        settings.put("sheet.form", form.name());
    }
}

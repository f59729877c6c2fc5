package thrumwright.editor.sheet;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import thrumwright.drawing.Fonts;
import thrumwright.output.SheetLayout;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetSection;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;

/**
 * A sheet laid out as it is wanted.
 *
 * @param pages that are to be printed
 * @param counts pages of every section, whether it is wanted or not
 */
public record SheetMade(SheetPages pages, Map<SheetSection, Integer> counts) {
    static SheetMade of(SheetLook look, Plan plan, Fonts fonts, Locale locale) {
        SheetLayout layout = look.layout(plan, fonts, locale);
        Map<SheetSection, SheetPages> all = new EnumMap<>(SheetSection.class);
        Map<SheetSection, Integer> counts = new EnumMap<>(SheetSection.class);
        for (SheetSection section : SheetSection.values()) {
            all.put(section, layout.section(section));
            counts.put(section, all.get(section).count());
        }
        all.keySet().retainAll(look.sections());
        return new SheetMade(
                look.printed(plan, layout.joined(all.values()), locale), Collections.unmodifiableMap(counts));
    }
}

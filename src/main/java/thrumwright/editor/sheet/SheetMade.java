package thrumwright.editor.sheet;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import thrumwright.output.SheetLayout;
import thrumwright.output.SheetSection;
import thrumwright.output.page.SheetPages;

/**
 * A sheet laid out as it is wanted.
 *
 * @param pages that are to be printed
 * @param counts pages of every section, whether it is wanted or not
 */
public record SheetMade(SheetPages pages, Map<SheetSection, Integer> counts) {
    static SheetMade of(SheetLayout layout, Set<SheetSection> wanted) {
        Map<SheetSection, SheetPages> all = new EnumMap<>(SheetSection.class);
        Map<SheetSection, Integer> counts = new EnumMap<>(SheetSection.class);
        for (SheetSection section : SheetSection.values()) {
            all.put(section, layout.section(section));
            counts.put(section, all.get(section).count());
        }
        all.keySet().retainAll(wanted);
        return new SheetMade(layout.joined(all.values()), Collections.unmodifiableMap(counts));
    }
}

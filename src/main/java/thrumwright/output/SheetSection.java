package thrumwright.output;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What a printed sheet consists of, in the order in which it is printed. Each can be left out. */
public enum SheetSection {
    /** How the warp is put on the loom, and a strip to measure a cloth that travels. */
    WARPING,
    /** What to buy and to cut, and strips of paper to hold against the weaving. */
    CUTS,
    /** A page for each end, to hang by the loom. */
    CARDS,
    /** How each kind of block is worked, once for each kind, and what happens off the loom. */
    BOOKLET,
    /** Planned measures, with room to write how it came out. */
    RECORD;

    /** What is printed unless said otherwise. */
    public static final Set<SheetSection> USUAL = of(EnumSet.of(CUTS, CARDS, BOOKLET));

    /** A set of them that can't be changed, in their order. */
    public static Set<SheetSection> of(Collection<SheetSection> some) {
        EnumSet<SheetSection> ordered = EnumSet.noneOf(SheetSection.class);
        ordered.addAll(some);
        return Collections.unmodifiableSet(ordered);
    }

    /** A key of its texts, and its name on the command line. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}

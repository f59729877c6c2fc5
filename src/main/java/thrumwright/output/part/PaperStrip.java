package thrumwright.output.part;

import thrumwright.output.page.Part;

/** A strip of paper to cut out, as wide as it is. */
interface PaperStrip extends Part {
    /** In points, more than 0. */
    double width();
}

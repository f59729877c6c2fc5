package thrumwright.drawing.yarn;

import java.awt.Color;
import thrumwright.drawing.Palette;
import thrumwright.yarn.Yarn;

/** A yarn and how its colour is drawn. */
record DyedYarn(Yarn yarn, Tint tint) {
    /** How a yarn's colour is drawn. */
    enum Tint {
        FULL,
        /** It comes out again, and is framed besides. */
        PALE,
        /** It is only there to stand on. */
        GREY
    }

    Color colour(Palette palette) {
        Color own = palette.yarn(yarn.colour());
        return switch (tint) {
            case FULL -> own;
            case PALE -> Palette.mixed(own, palette.paper(), 0.45);
            case GREY -> Palette.mixed(Palette.grey(own), palette.paper(), 0.5);
        };
    }

    int plies() {
        return yarn.plies();
    }
}

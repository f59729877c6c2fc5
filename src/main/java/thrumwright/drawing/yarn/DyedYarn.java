package thrumwright.drawing.yarn;

import java.awt.Color;
import java.util.List;
import thrumwright.drawing.Palette;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
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
        return tinted(yarn.colour(), palette);
    }

    /** The colours of a bundle's strands, one for each; none where all are alike. */
    List<Color> strands(Palette palette) {
        List<Color> all = yarn.bundle().map(Bundle::colours).orElse(List.of()).stream()
                .map(colour -> tinted(colour, palette))
                .toList();
        return all.stream().distinct().count() > 1 ? all : List.of();
    }

    private Color tinted(Colour colour, Palette palette) {
        Color own = palette.yarn(colour);
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

package thrumwright.testing;

import java.util.Optional;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.measure.Length;
import thrumwright.yarn.Colour;
import thrumwright.yarn.CountSystem;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/**
 * The worked panel of the computing method: 72 ends at 3 to the cm, warp cotton 12/6 Ne by count, weft wool of 5 wraps
 * in 1 cm beaten to half, posts of 22 mm standing 30 mm off the warp.
 */
public final class WorkedPanel {
    public static final int ENDS = 72;
    public static final double SPACING = 10.0 / 3;

    private WorkedPanel() {}

    public static Yarn cord() {
        return new Yarn(
                "cord",
                "Cotton cord",
                new Colour(0xe8e0d0),
                Fibre.COTTON,
                new Thickness.Counted(12, 6, CountSystem.COTTON),
                Firmness.HARD);
    }

    public static Yarn weft() {
        return new Yarn(
                "weft",
                "Teal wool",
                new Colour(0x2a6f78),
                Fibre.WOOL,
                new Thickness.Wraps(5, Length.parse("1 cm")),
                Firmness.SOFT);
    }

    public static Setting with(Yarn yarn) {
        return new Setting(
                ENDS, SPACING, cord().diameter(), yarn.diameter(), yarn.beaten(), Optional.of(new Posts(22, 30)));
    }
}

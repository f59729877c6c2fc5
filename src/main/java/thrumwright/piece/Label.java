package thrumwright.piece;

import java.util.Objects;

/**
 * A label to sew to the back: what only the weaver can say of it.
 *
 * @param maker who wove it; may be empty
 * @param year when; may be empty
 */
public record Label(String maker, String year) {
    public Label {
        Objects.requireNonNull(maker);
        Objects.requireNonNull(year);
    }

    public Label withMaker(String other) {
        return new Label(other, year);
    }

    public Label withYear(String other) {
        return new Label(maker, other);
    }
}

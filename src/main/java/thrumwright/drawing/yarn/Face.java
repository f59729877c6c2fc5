package thrumwright.drawing.yarn;

import java.awt.geom.AffineTransform;
import java.util.List;
import thrumwright.drawing.View;

/** The side from which a cloth is seen. From behind, left and right change places. */
public enum Face {
    FRONT,
    BACK;

    /** The yarn that lies towards the eye. */
    List<Stretch> near(BlockPicture picture, Detail detail) {
        return this == FRONT ? picture.front(detail) : picture.back(detail);
    }

    /** The yarn that lies beyond the warp. */
    List<Stretch> far(BlockPicture picture, Detail detail) {
        return this == FRONT ? picture.back(detail) : picture.front(detail);
    }

    /** +1, or −1 where the picture is mirrored: twist is not, for a yarn twists the same way from every side. */
    int slant() {
        return this == FRONT ? 1 : -1;
    }

    /** Turns a drawing of the front's coordinates round the middle of a warp of that span, mm, 0 or more. */
    public AffineTransform turned(View view, double span) {
        return this == FRONT ? new AffineTransform() : new AffineTransform(-1, 0, 0, 1, view.x(0) + view.x(span), 0);
    }
}

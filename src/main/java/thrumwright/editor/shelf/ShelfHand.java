package thrumwright.editor.shelf;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.Icon;
import javax.swing.JList;
import javax.swing.SwingUtilities;

/** Takes a kind from the shelf when the mouse draws it off. */
final class ShelfHand extends MouseAdapter {
    private static final int MEANT = 5;

    private final JList<Ware> list;
    private final Function<Ware, Icon> picture;
    private final CarryToCanvas carrying;
    private Optional<Hold> hold = Optional.empty();
    private boolean carried;

    private record Hold(Ware ware, Point from) {}

    ShelfHand(JList<Ware> list, Function<Ware, Icon> picture, CarryToCanvas carrying) {
        this.list = list;
        this.picture = picture;
        this.carrying = carrying;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        int index = list.locationToIndex(event.getPoint());
        boolean takes = SwingUtilities.isLeftMouseButton(event) && index >= 0;
        hold = takes ? Optional.of(new Hold(list.getModel().getElementAt(index), event.getPoint())) : Optional.empty();
        carried = false;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        hold.ifPresent(held -> drag(held, event));
    }

    private void drag(Hold held, MouseEvent event) {
        // the list would choose whatever it is dragged over
        list.setSelectedValue(held.ware(), false);
        if (!carried && held.from().distance(event.getPoint()) >= MEANT) {
            carried = true;
            carrying.begin(held.ware().block(), picture.apply(held.ware()), event);
        } else if (carried) {
            carrying.move(event);
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (carried) {
            carrying.drop(event);
        }
        hold = Optional.empty();
        carried = false;
    }
}

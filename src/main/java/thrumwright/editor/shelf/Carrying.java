package thrumwright.editor.shelf;

import java.awt.event.MouseEvent;
import javax.swing.Icon;
import thrumwright.block.Block;

/** What becomes of a block that is carried from the shelf with the mouse. */
interface Carrying {
    void begin(Block block, Icon picture, MouseEvent event);

    void move(MouseEvent event);

    void drop(MouseEvent event);

    /** @return whether anything was carried */
    boolean giveUp();
}

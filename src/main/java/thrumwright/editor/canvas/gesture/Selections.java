package thrumwright.editor.canvas.gesture;

import java.awt.Toolkit;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;

/** What a click selects. */
final class Selections {
    private Selections() {}

    /** A plain click selects one block, with the menu key it adds or takes away, with Shift it selects up to there. */
    static Selection clicked(Session session, BlockSpot spot, MouseEvent event) {
        Selection now = session.selection();
        if (event.isShiftDown() && now.lead().isPresent() && now.place() == spot.place()) {
            return now.upTo(session.shown(), spot.id());
        }
        boolean adding = (event.getModifiersEx() & menuKey()) != 0;
        if (adding && now.place() == spot.place()) {
            List<String> ids = new ArrayList<>(now.ids());
            if (!ids.remove(spot.id())) {
                ids.add(spot.id());
            }
            return new Selection(spot.place(), ids);
        }
        return Selection.of(spot.place(), spot.id());
    }

    private static int menuKey() {
        return java.awt.GraphicsEnvironment.isHeadless()
                ? MouseEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }
}

package thrumwright.editor.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import thrumwright.block.Block;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.OneByOne;
import thrumwright.piece.Place;

/**
 * The place of the selected block's fields. Another block's are made in parts, and take the place of those before when all are
 * there.
 */
final class BlockTab {
    private final Desk desk;
    private final JScrollPane scroll = Column.scrolling(null);
    private Optional<Panel> shown = Optional.empty();
    private Optional<Coming> coming = Optional.empty();

    /** Whose fields a panel has. */
    private record Whose(Place place, Optional<String> id, Optional<Class<?>> kind, boolean follows) {}

    private record Panel(FieldPanel fields, Whose whose) {}

    /** A panel that is still being made. */
    private record Coming(Panel panel, OneByOne making) {}

    BlockTab(Desk desk) {
        this.desk = desk;
    }

    JComponent component() {
        return scroll;
    }

    /** Other fields only where another block is shown; else the same fields with what they say now. */
    void show() {
        Whose wanted = wanted();
        if (coming.filter(now -> now.panel().whose().equals(wanted)).isPresent()) {
            coming.get().panel().fields().refresh();
            return;
        }
        giveUp();
        if (shown.filter(now -> now.whose().equals(wanted)).isPresent()) {
            shown.get().fields().refresh();
        } else {
            make(wanted);
        }
    }

    private Whose wanted() {
        Selection selection = desk.session().selection();
        Optional<Block> lead = selection.leadIn(desk.session().shown());
        return new Whose(
                selection.place(),
                lead.map(Block::id),
                lead.map(Object::getClass),
                desk.session().piece().topFollows());
    }

    private void make(Whose wanted) {
        shown.ifPresent(now -> now.fields().takeOver());
        if (coming.isPresent()) {
            // what was taken over has changed the piece, and the fields follow already
            return;
        }
        Filling filling = BlockForm.of(desk);
        Panel panel = new Panel(filling.panel(), wanted);
        List<Runnable> parts = new ArrayList<>();
        filling.parts(scroll).forEach(part -> parts.add(() -> whileWanted(panel, part)));
        parts.add(() -> whileWanted(panel, () -> bring(panel)));
        coming = Optional.of(new Coming(panel, OneByOne.begin(parts)));
    }

    /** Behind another tab nobody says that a block has gone: its fields can't be made any more then, and are nobody's loss. */
    private void whileWanted(Panel panel, Runnable part) {
        if (panel.whose().equals(wanted())) {
            part.run();
        } else {
            giveUp();
        }
    }

    private void giveUp() {
        coming.ifPresent(now -> now.making().drop());
        coming = Optional.empty();
    }

    private void bring(Panel panel) {
        shown.ifPresent(now -> now.fields().takeOver());
        Optional<String> focused = focusedField();
        coming = Optional.empty();
        shown = Optional.of(panel);
        scroll.setViewportView(panel.fields());
        focused.ifPresent(this::focus);
    }

    /** The field that has the keyboard, by its name. */
    private Optional<String> focusedField() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean here = owner != null && SwingUtilities.isDescendingFrom(owner, scroll);
        return here ? Optional.of(String.valueOf(owner.getName())) : Optional.empty();
    }

    /** Gives the keyboard to a field of that name; else to whatever comes first, so that it stays in the form. */
    void focus(String name) {
        coming.ifPresent(now -> now.making().finish());
        shown.flatMap(now -> Stream.of(now.fields().getComponents())
                        .filter(field -> name.equals(field.getName()))
                        .findFirst())
                .orElseGet(scroll::getParent)
                .requestFocusInWindow();
    }

    void takeOver() {
        shown.ifPresent(now -> now.fields().takeOver());
    }
}

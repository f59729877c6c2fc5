package thrumwright.editor.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import thrumwright.block.Block;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Column;
import thrumwright.piece.Place;

/** All fields of a window: the selected block, the piece, the loom, the yarns, the habits. */
public final class FormTabs {
    private final Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private final JScrollPane blockScroll = Column.scrolling(null);
    private final YarnForm yarns;
    private final FieldPanel piece;
    private final FieldPanel loom;
    private final FieldPanel habits;
    /** What brings each tab up to date. */
    private final List<Runnable> refreshes;

    private final BitSet outdated = new BitSet();
    private FieldPanel block;
    private Shown shown;

    /** Which fields the block panel has at present. */
    private record Shown(Place place, Optional<String> id, Optional<Class<?>> kind, boolean follows) {}

    public FormTabs(Desk desk) {
        this.desk = desk;
        PieceForm forms = new PieceForm(desk);
        piece = forms.piecePanel();
        loom = forms.loomPanel();
        habits = forms.habitsPanel();
        yarns = new YarnForm(desk);
        tabs.setName("forms");
        tabs.addTab(desk.texts().say("tab.block"), blockScroll);
        tabs.addTab(desk.texts().say("tab.piece"), Column.scrolling(piece));
        tabs.addTab(desk.texts().say("tab.loom"), Column.scrolling(loom));
        FieldPanel around = new FieldPanel(desk);
        around.setLayout(new java.awt.BorderLayout());
        around.add(yarns.panel());
        tabs.addTab(desk.texts().say("tab.yarns"), Column.scrolling(around));
        tabs.addTab(desk.texts().say("tab.habits"), Column.scrolling(habits));
        refreshes = List.of(this::showBlock, piece::refresh, loom::refresh, yarns::refresh, habits::refresh);
        showBlock();
        tabs.addChangeListener(event -> refreshSeen());
        desk.session().listen(this::changed);
        desk.whenTaken(this::takeOver);
    }

    public JComponent component() {
        return tabs;
    }

    /** Brings the block's fields to the front. */
    public void bringBlock() {
        tabs.setSelectedIndex(0);
    }

    private void changed(Change change) {
        if (change == Change.FILE) {
            return;
        }
        outdated.set(0, change == Change.PIECE ? refreshes.size() : 1);
        refreshSeen();
    }

    /** Fields that can't be seen follow when they can. */
    private void refreshSeen() {
        int seen = tabs.getSelectedIndex();
        if (outdated.get(seen)) {
            outdated.clear(seen);
            refreshes.get(seen).run();
        }
    }

    /** Other fields only where another block is shown; else the same fields with what they say now. */
    private void showBlock() {
        Selection selection = desk.session().selection();
        Optional<Block> lead = selection.leadIn(desk.session().shown());
        Shown wanted = new Shown(
                selection.place(),
                lead.map(Block::id),
                lead.map(Object::getClass),
                desk.session().piece().topFollows());
        if (wanted.equals(shown)) {
            block.refresh();
            return;
        }
        if (block != null) {
            block.takeOver();
        }
        shown = wanted;
        Optional<String> focused = focusedField();
        block = BlockForm.panel(desk);
        blockScroll.setViewportView(block);
        focused.ifPresent(this::focus);
    }

    /** The field of the block that has the keyboard, by its name. */
    private Optional<String> focusedField() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean here = owner != null && SwingUtilities.isDescendingFrom(owner, blockScroll);
        return here ? Optional.of(String.valueOf(owner.getName())) : Optional.empty();
    }

    /** Gives the keyboard to a field of that name; else to whatever comes first, so that it stays in the form. */
    private void focus(String name) {
        for (Component component : block.getComponents()) {
            if (name.equals(component.getName())) {
                component.requestFocusInWindow();
                return;
            }
        }
        tabs.requestFocusInWindow();
    }

    private void takeOver() {
        block.takeOver();
        piece.takeOver();
        loom.takeOver();
        habits.takeOver();
        yarns.takeOver();
    }
}

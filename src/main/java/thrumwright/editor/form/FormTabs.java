package thrumwright.editor.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import thrumwright.block.Block;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.WhenWanted;
import thrumwright.piece.Place;

/** All fields of a window: the selected block, the piece, the loom, the yarns, the habits. */
public final class FormTabs {
    private final Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private JScrollPane blockScroll;
    /** All tabs but that of the block, in their order. */
    private final List<Tab> others = new ArrayList<>();

    private boolean blockOutdated;
    private Optional<BlockPanel> block = Optional.empty();

    private record BlockPanel(FieldPanel panel, Shown shown) {}

    /** Which fields the block panel has at present. */
    private record Shown(Place place, Optional<String> id, Optional<Class<?>> kind, boolean follows) {}

    public FormTabs(Desk desk) {
        this.desk = desk;
        tabs.setName("forms");
        desk.whenTaken(this::takeOver);
    }

    /** Makes the fields; once, when there is time for it. */
    public void build() {
        PieceForm forms = new PieceForm(desk);
        leaveKeys(tabs);
        blockScroll = Column.scrolling(null);
        tabs.addTab(desk.texts().say("tab.block"), blockScroll);
        add("tab.piece", () -> Fields.of(forms.piecePanel()));
        add("tab.loom", () -> Fields.of(forms.loomPanel()));
        add("tab.yarns", this::yarns);
        add("tab.habits", () -> Fields.of(forms.habitsPanel()));
        showBlock();
        tabs.addChangeListener(event -> refreshSeen());
        desk.session().listen(this::changed);
    }

    private void add(String key, Supplier<Fields> make) {
        Tab tab = new Tab(make);
        others.add(tab);
        tabs.addTab(desk.texts().say(key), tab.scroll);
    }

    private Fields yarns() {
        YarnForm yarns = new YarnForm(desk);
        FieldPanel around = new FieldPanel(desk);
        around.setLayout(new java.awt.BorderLayout());
        around.add(yarns.panel());
        return new Fields(around, yarns::refresh, yarns::takeOver);
    }

    /** What a tab holds. */
    private record Fields(JComponent component, Runnable refresh, Runnable takeOver) {
        static Fields of(FieldPanel panel) {
            return new Fields(panel, panel::refresh, panel::takeOver);
        }
    }

    /** Its fields are made when they are first seen, and follow the piece while they are seen. */
    private static final class Tab {
        private final JScrollPane scroll = Column.scrolling(null);
        private final Supplier<Fields> make;
        private final WhenWanted<Fields> made = new WhenWanted<>();
        private boolean outdated;

        Tab(Supplier<Fields> make) {
            this.make = make;
        }

        void seen() {
            if (made.made().isEmpty()) {
                scroll.setViewportView(made.get(make).component());
            } else if (outdated) {
                made.get(make).refresh().run();
            }
            outdated = false;
        }

        void takeOver() {
            made.made().ifPresent(fields -> fields.takeOver().run());
        }
    }

    /** A row of tabs would keep the keys that move a block. */
    public static void leaveKeys(JTabbedPane tabs) {
        tabs.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ctrl UP"), "none");
        tabs.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke("ctrl DOWN"), "none");
    }

    public JComponent component() {
        return tabs;
    }

    /** Brings the block's fields to the front. */
    public void bringBlock() {
        tabs.setSelectedIndex(0);
    }

    /** Lets the weaver type the design's height. */
    public void takeDesign() {
        if (block.isPresent()) {
            bringBlock();
            focus("field.glance.design.height");
        }
    }

    private void changed(Change change) {
        if (change == Change.FILE) {
            return;
        }
        blockOutdated = true;
        if (change == Change.PIECE) {
            others.forEach(tab -> tab.outdated = true);
        }
        refreshSeen();
    }

    /** Fields that can't be seen follow when they can. */
    private void refreshSeen() {
        int seen = tabs.getSelectedIndex();
        if (seen > 0) {
            others.get(seen - 1).seen();
        } else if (blockOutdated) {
            blockOutdated = false;
            showBlock();
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
        if (block.filter(now -> now.shown().equals(wanted)).isPresent()) {
            block.get().panel().refresh();
            return;
        }
        block.ifPresent(now -> now.panel().takeOver());
        Optional<String> focused = focusedField();
        block = Optional.of(new BlockPanel(BlockForm.panel(desk), wanted));
        blockScroll.setViewportView(block.get().panel());
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
        for (Component component : block.orElseThrow().panel().getComponents()) {
            if (name.equals(component.getName())) {
                component.requestFocusInWindow();
                return;
            }
        }
        tabs.requestFocusInWindow();
    }

    private void takeOver() {
        block.ifPresent(now -> now.panel().takeOver());
        others.forEach(Tab::takeOver);
    }
}

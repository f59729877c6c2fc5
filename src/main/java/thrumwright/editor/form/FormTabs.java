package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import thrumwright.editor.edit.Change;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Following;
import thrumwright.editor.look.OneByOne;
import thrumwright.editor.look.WhenWanted;

/** All fields of a window: the selected block, the piece, the loom, the yarns, the habits. */
public final class FormTabs {
    private final Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private Optional<BlockTab> block = Optional.empty();
    /** All tabs but that of the block, in their order. */
    private final List<Tab> others = new ArrayList<>();

    private boolean blockOutdated;
    private final Following following = new Following(this::refreshSeen);

    public FormTabs(Desk desk) {
        this.desk = desk;
        tabs.setName("forms");
        desk.whenTaken(this::takeOver);
    }

    /** Makes the fields; once, when there is time for it. */
    public void build() {
        PieceForm forms = new PieceForm(desk);
        leaveKeys(tabs);
        BlockTab own = new BlockTab(desk);
        block = Optional.of(own);
        tabs.addTab(desk.texts().say("tab.block"), own.component());
        add("tab.piece", () -> Fields.of(forms.piece()));
        add("tab.loom", () -> Fields.of(forms.loom()));
        add("tab.yarns", this::yarns);
        add("tab.habits", () -> Fields.of(forms.habits()));
        own.show();
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
        return new Fields(around, scroll -> List.of(), yarns::refresh, yarns::takeOver);
    }

    /**
     * What a tab holds.
     *
     * @param parts what is still to be added to it, in this order, before it is shown in a scroll pane
     */
    private record Fields(
            JComponent component, Function<JScrollPane, List<Runnable>> parts, Runnable refresh, Runnable takeOver) {
        static Fields of(Filling filling) {
            FieldPanel panel = filling.panel();
            return new Fields(panel, filling::parts, panel::refresh, panel::takeOver);
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
                Fields fields = made.get(make);
                List<Runnable> parts = new ArrayList<>(fields.parts().apply(scroll));
                parts.add(() -> scroll.setViewportView(fields.component()));
                OneByOne.begin(parts);
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
        block.ifPresent(own -> {
            bringBlock();
            own.focus("field.glance.design.height");
        });
    }

    private void changed(Change change) {
        if (change == Change.FILE) {
            return;
        }
        blockOutdated = true;
        if (change == Change.PIECE) {
            others.forEach(tab -> tab.outdated = true);
        }
        following.now(desk.session().isTrying());
    }

    /** Fields that can't be seen follow when they can. */
    private void refreshSeen() {
        int seen = tabs.getSelectedIndex();
        if (seen > 0) {
            others.get(seen - 1).seen();
        } else if (blockOutdated) {
            blockOutdated = false;
            block.ifPresent(BlockTab::show);
        }
    }

    private void takeOver() {
        block.ifPresent(BlockTab::takeOver);
        others.forEach(Tab::takeOver);
    }
}

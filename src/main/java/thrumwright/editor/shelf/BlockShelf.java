package thrumwright.editor.shelf;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Icons;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;

/**
 * All kinds of blocks to take from: drag one to its place, or choose it and press Enter to put it in above the selected
 * block. Can be folded away to its heading.
 */
public final class BlockShelf extends JPanel {
    private static final long serialVersionUID = 1L;
    /** How much of the column it lies in it takes when it is open. */
    private static final double SHARE = 0.4;

    private final transient Session session;
    private final transient Texts texts;
    private final DefaultListModel<Ware> wares = new DefaultListModel<>();
    private final transient WarePictures pictures;
    private final WareCell cell;
    private final JList<Ware> list = new Wares(wares);
    private final JScrollPane scroll = new JScrollPane(list);
    private final JToggleButton heading = new JToggleButton();
    private transient Consumer<Boolean> folding = open -> {};
    private UnitSystem units;

    /**
     * @param labels the list beside the canvas, where a block can be let go as well
     * @param add puts a new block of a kind in, by its key
     */
    public BlockShelf(PieceCanvas canvas, LabelColumn labels, Edits edits, Consumer<String> add) {
        super(new BorderLayout());
        this.session = canvas.session();
        this.texts = canvas.texts();
        this.pictures = new WarePictures(session, canvas::palette, WareCell.pictureSize(), list::repaint);
        this.cell = new WareCell(pictures);
        setName("shelf");
        list.setCellRenderer(cell);
        list.setName("wares");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(texts.say("shelf.title"));
        list.getAccessibleContext().setAccessibleDescription(texts.say("shelf.description"));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(heading(), BorderLayout.NORTH);
        add(scroll);
        mouseAndKeys(add, new CarryToCanvas(canvas, labels, edits), canvas::requestFocusInWindow);
        session.listen(this::changed);
        refill();
    }

    private JComponent heading() {
        heading.setText(texts.say("shelf.title"));
        heading.setName("shelf.heading");
        heading.setToolTipText(texts.say("shelf.fold.tip"));
        heading.setHorizontalAlignment(SwingConstants.LEADING);
        heading.putClientProperty("JButton.buttonType", "toolBarButton");
        heading.putClientProperty("FlatLaf.style", "font: $semibold.font; toolbar.selectedBackground: null");
        heading.addActionListener(event -> fold(!heading.isSelected()));
        return heading;
    }

    private void mouseAndKeys(Consumer<String> add, CarryToCanvas carrying, Runnable leave) {
        ShelfHand hand = new ShelfHand(list, cell::picture, carrying);
        list.setAutoscrolls(false);
        list.addMouseListener(hand);
        list.addMouseMotionListener(hand);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    addSelected(add);
                }
            }
        });
        key("ENTER", () -> addSelected(add));
        key("ESCAPE", () -> {
            if (!carrying.giveUp()) {
                leave.run();
            }
        });
    }

    private void key(String key, Runnable does) {
        list.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        list.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    private void addSelected(Consumer<String> add) {
        Ware ware = list.getSelectedValue();
        if (ware != null) {
            add.accept(ware.key());
        }
    }

    private void changed(Change change) {
        if (change == Change.PIECE) {
            refill();
            if (pictures.outdated()) {
                list.repaint();
            }
        }
    }

    private void refill() {
        UnitSystem now = session.piece().habits().units();
        if (now != units) {
            units = now;
            int selected = Math.max(0, list.getSelectedIndex());
            wares.clear();
            wares.addAll(Ware.all(now, texts));
            list.setSelectedIndex(selected);
        }
    }

    /** @param told whether the weaver opened it or folded it away */
    public void whenFolded(Consumer<Boolean> told) {
        folding = told;
    }

    public boolean isOpen() {
        return scroll.isVisible();
    }

    /** As the weaver wants it from now on. */
    public void fold(boolean away) {
        setOpen(!away);
        folding.accept(!away);
    }

    public void setOpen(boolean open) {
        heading.setSelected(open);
        heading.setIcon(Icons.of(open ? "folded-out" : "folded"));
        heading.getAccessibleContext().setAccessibleDescription(texts.say(open ? "shelf.is-open" : "shelf.is-folded"));
        scroll.setVisible(open);
        revalidate();
    }

    /** Gives the keyboard to the shelf. */
    public void enter() {
        list.requestFocusInWindow();
        list.ensureIndexIsVisible(list.getSelectedIndex());
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        int room = getParent() == null ? 0 : getParent().getHeight();
        return isOpen() && room > 0 ? new Dimension(size.width, (int) (room * SHARE)) : size;
    }

    /** As wide as there is room, so that the words wrap. */
    private static final class Wares extends JList<Ware> {
        private static final long serialVersionUID = 1L;

        Wares(DefaultListModel<Ware> wares) {
            super(wares);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        /** The words wrap anew in another width, and the cells with them. */
        @Override
        public void setBounds(int x, int y, int width, int height) {
            boolean other = width != getWidth();
            super.setBounds(x, y, width, height);
            if (other) {
                setFixedCellHeight(1);
                setFixedCellHeight(-1);
            }
        }

        /** The shelf stays still while something is carried off it. */
        @Override
        public void scrollRectToVisible(Rectangle rectangle) {
            if (!getValueIsAdjusting()) {
                super.scrollRectToVisible(rectangle);
            }
        }

        /** The words of the kind under the pointer would only repeat what is seen. */
        @Override
        public String getToolTipText(MouseEvent event) {
            return null;
        }

        /** A press below the last kind means none. */
        @Override
        public int locationToIndex(Point point) {
            int index = super.locationToIndex(point);
            Rectangle cell = index < 0 ? null : getCellBounds(index, index);
            return cell != null && cell.contains(point) ? index : -1;
        }
    }
}

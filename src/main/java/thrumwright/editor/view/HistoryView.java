package thrumwright.editor.view;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Smooth;
import thrumwright.editor.text.Texts;

/**
 * Everything that was done to the piece, by name and in order, with a mark at where it is now; a click or Enter goes to
 * how it was after any of these steps. Arrow keys only look.
 */
public final class HistoryView {
    private final Session session;
    private final Texts texts;
    private final IntConsumer jump;
    private final JList<Point> list = new JList<>();
    private final JScrollPane scroll = new JScrollPane(list);

    /**
     * A point of the history.
     *
     * @param says the step that led here, with whatever is to be said of it
     */
    private record Point(String says, boolean present, boolean undone) {
        @Override
        public String toString() {
            return says;
        }
    }

    /** @param jump goes to where so many steps are done */
    public HistoryView(Session session, Texts texts, IntConsumer jump) {
        this.session = session;
        this.texts = texts;
        this.jump = jump;
        list.setName("history");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new StepLine());
        list.getAccessibleContext().setAccessibleName(texts.say("tab.history"));
        list.getAccessibleContext().setAccessibleDescription(texts.say("history.description"));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                if (!SwingUtilities.isLeftMouseButton(event)) {
                    return;
                }
                int index = list.locationToIndex(event.getPoint());
                if (index >= 0 && list.getCellBounds(index, index).contains(event.getPoint())) {
                    jump.accept(index);
                }
            }
        });
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "jump");
        list.getActionMap().put("jump", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                goToSelected();
            }
        });
        scroll.setBorder(BorderFactory.createEmptyBorder());
        LiveView.keep(session, scroll, this::refresh);
    }

    public JComponent component() {
        return scroll;
    }

    /** Gives the keyboard to the list. */
    public void enter() {
        list.requestFocusInWindow();
    }

    private void goToSelected() {
        if (list.getSelectedIndex() >= 0) {
            jump.accept(list.getSelectedIndex());
        }
    }

    private void refresh() {
        int done = session.history().done();
        List<String> names = session.history().names();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= names.size(); i++) {
            String name = i == 0 ? texts.say("history.beginning") : names.get(i - 1);
            points.add(new Point(said(Texts.capitalised(name), i, done), i == done, i > done));
        }
        list.setListData(points.toArray(Point[]::new));
        list.setSelectedIndex(done);
        list.ensureIndexIsVisible(done);
    }

    private String said(String name, int count, int done) {
        String said = name;
        if (session.isOnFile(count)) {
            said = texts.say("history.saved", Map.of("step", said));
        }
        return count > done ? texts.say("history.undone", Map.of("step", said)) : said;
    }

    private static final class StepLine extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> all, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(all, value, index, selected, focused);
            Point point = (Point) value;
            setIcon(new Here(point.present(), Pixels.of(10)));
            setIconTextGap(8);
            setFont(UIManager.getFont(point.present() ? "semibold.font" : "Label.font"));
            if (point.undone() && !selected) {
                setForeground(UIManager.getColor("Thrumwright.quiet"));
            }
            setBorder(BorderFactory.createEmptyBorder(Pixels.of(2), Pixels.of(10), Pixels.of(2), Pixels.of(8)));
            return this;
        }
    }

    /** Points at where the piece is now; elsewhere as wide, but empty. */
    private record Here(boolean shown, int size) implements Icon {
        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            if (!shown) {
                return;
            }
            Graphics2D g = (Graphics2D) graphics.create();
            Smooth.lines(g);
            g.setColor(component.getForeground());
            Path2D wedge = new Path2D.Double();
            wedge.moveTo(x + 1, y);
            wedge.lineTo(x + size - 1, y + size / 2.0);
            wedge.lineTo(x + 1, y + size);
            wedge.closePath();
            g.fill(wedge);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return size;
        }

        @Override
        public int getIconHeight() {
            return size;
        }
    }
}

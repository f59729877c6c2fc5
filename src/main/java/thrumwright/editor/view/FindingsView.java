package thrumwright.editor.view;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.plan.Finding;
import thrumwright.plan.Severity;

/** What the weaver should know; choosing a finding selects the block that it is about. */
public final class FindingsView {
    private final Session session;
    private final Texts texts;
    private final DefaultListModel<Finding> model = new DefaultListModel<>();
    private final JList<Finding> list = new JList<>(model);
    private final JScrollPane scroll = new JScrollPane(list);
    private final Consumer<Integer> counted;
    private boolean refreshing;

    /** @param counted told how many findings there are whenever that may have changed */
    public FindingsView(Session session, Texts texts, Consumer<Integer> counted) {
        this.session = session;
        this.texts = texts;
        this.counted = counted;
        list.setName("findings");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Sentence(texts));
        list.getAccessibleContext().setAccessibleName(texts.say("tab.findings"));
        list.addListSelectionListener(event -> choose());
        scroll.setBorder(null);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getViewport().addComponentListener(new java.awt.event.ComponentAdapter() {
            @Override
            public void componentResized(java.awt.event.ComponentEvent event) {
                list.setFixedCellWidth(scroll.getViewport().getWidth());
                list.setFixedCellHeight(1);
                list.setFixedCellHeight(-1);
            }
        });
        session.listen(change -> {
            if (change == Change.PIECE) {
                refresh();
            }
        });
        refresh();
    }

    public JComponent component() {
        return scroll;
    }

    private void refresh() {
        List<Finding> findings = session.plan().findings();
        if (!findings.equals(java.util.Collections.list(model.elements()))) {
            refreshing = true;
            model.clear();
            findings.forEach(model::addElement);
            refreshing = false;
        }
        counted.accept(findings.size());
    }

    private void choose() {
        Finding finding = list.getSelectedValue();
        if (refreshing || finding == null || finding.blockId().isEmpty()) {
            return;
        }
        finding.place()
                .ifPresent(place ->
                        session.select(Selection.of(place, finding.blockId().get())));
    }

    private static final class Sentence extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        private final transient Texts texts;

        Sentence(Texts texts) {
            this.texts = texts;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value, index, selected, focused);
            Finding finding = (Finding) value;
            int width = Math.max(120, list.getFixedCellWidth() - 50);
            String weight = texts.name("severity", finding.severity());
            setText("<html><body width='" + width * 3 / 4 + "'><b>" + weight + "</b> "
                    + finding.sentence().replace("&", "&amp;").replace("<", "&lt;") + "</body></html>");
            setIcon(new Mark(finding.severity()));
            setIconTextGap(10);
            setVerticalTextPosition(TOP);
            setBorder(javax.swing.BorderFactory.createEmptyBorder(5, 10, 5, 8));
            return this;
        }
    }

    /** A shape for each weight, so that colour isn't the only sign: a square, a triangle, a dot. */
    private record Mark(Severity severity) implements Icon {
        private static final int SIZE = 12;

        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.translate(x, y + 3);
            switch (severity) {
                case PROBLEM -> {
                    g.setColor(UIManager.getColor("Thrumwright.reason"));
                    g.fill(new Rectangle2D.Double(1, 1, 10, 10));
                }
                case CAUTION -> {
                    g.setColor(UIManager.getColor("Thrumwright.caution"));
                    Path2D triangle = new Path2D.Double();
                    triangle.moveTo(6, 0);
                    triangle.lineTo(12, 11);
                    triangle.lineTo(0, 11);
                    triangle.closePath();
                    g.fill(triangle);
                }
                case NOTE -> {
                    g.setColor(UIManager.getColor("Thrumwright.quiet"));
                    g.fill(new Ellipse2D.Double(2, 2, 8, 8));
                }
            }
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return SIZE;
        }

        @Override
        public int getIconHeight() {
            return SIZE + 3;
        }
    }
}

package thrumwright.editor.canvas;

import java.awt.BorderLayout;
import java.awt.ComponentOrientation;
import java.awt.Dimension;
import java.awt.Graphics;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;

/** The canvas under its rule, and at its left the list of the blocks, which stays where it is while the canvas moves. */
public final class Board extends JPanel {
    private static final long serialVersionUID = 1L;

    private final PieceCanvas canvas;
    private final LabelColumn labels;
    private final JScrollPane list;
    private transient Runnable painted = () -> {};

    public Board(PieceCanvas canvas, LabelColumn labels) {
        super(new BorderLayout());
        this.canvas = canvas;
        this.labels = labels;
        setName("board");
        JScrollPane picture = scrolled(canvas);
        picture.setColumnHeaderView(new WidthRule(canvas));
        picture.getColumnHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        picture.getViewport().addChangeListener(event -> labels.follow());
        list = scrolled(labels);
        list.setName("list");
        list.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        // its bar away from the lines that lead to the blocks
        list.setComponentOrientation(ComponentOrientation.RIGHT_TO_LEFT);
        list.setColumnHeaderView(labels.titles());
        add(list, BorderLayout.LINE_START);
        add(picture);
    }

    private static JScrollPane scrolled(JComponent component) {
        JScrollPane scroll = new JScrollPane(component);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        return scroll;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        labels.setRoom(width);
    }

    /** Whether the list needs its bar, and so more of the width, is known only when its height is. */
    @Override
    public void doLayout() {
        super.doLayout();
        list.validate();
        super.doLayout();
    }

    /** Shows no more than the cloth for a while; all else keeps its room. */
    public void bare() {
        canvas.setAnnotated(false);
        labels.setListed(false);
    }

    /** Shows rules, notes and marks again. */
    public void annotate() {
        canvas.setAnnotated(true);
    }

    /** Shows the list of the blocks again. */
    public void list() {
        labels.setListed(true);
    }

    /** @param once run when it has been painted for the first time, if it ever is */
    public void whenPainted(Runnable once) {
        painted = once;
    }

    @Override
    protected void paintChildren(Graphics g) {
        super.paintChildren(g);
        Runnable now = painted;
        painted = () -> {};
        now.run();
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet() ? super.getMinimumSize() : new Dimension(0, 0);
    }
}

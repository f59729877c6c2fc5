package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Ground;
import thrumwright.editor.look.Smooth;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.WarpParts.Slice;

/**
 * The warp to scale from the lower bar (left) to the upper bar (right): what takes how much of it, with the blocks of
 * both ends. A click on a block, or the arrow keys, select it; selected ones are framed.
 */
public final class BudgetView extends PictureView {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final transient Texts texts;
    private final transient Supplier<Palette> palette;

    public BudgetView(Session session, Texts texts, Supplier<Palette> palette) {
        this.session = session;
        this.texts = texts;
        this.palette = palette;
        setName("budget");
        setFocusable(true);
        getAccessibleContext().setAccessibleName(texts.say("tab.budget"));
        ToolTipManager.sharedInstance().registerComponent(this);
        listen();
        LiveView.keep(session, this, this::describe, this::repaint);
    }

    private void listen() {
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event)) {
                    requestFocusInWindow();
                    sketch().at(event.getPoint()).ifPresent(BudgetView.this::select);
                }
            }

            @Override
            public void mouseMoved(MouseEvent event) {
                setCursor(Cursor.getPredefinedCursor(
                        sketch().at(event.getPoint()).isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        onKeys(-1, "LEFT", "DOWN");
        onKeys(1, "RIGHT", "UP");
    }

    private void onKeys(int by, String... keys) {
        for (String key : keys) {
            getInputMap().put(KeyStroke.getKeyStroke(key), "block " + by);
        }
        getActionMap().put("block " + by, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                go(by);
            }
        });
    }

    private void go(int by) {
        List<Slice> slices = WarpParts.of(session.plan(), palette.get()).slices();
        int now = -1;
        for (int i = 0; i < slices.size(); i++) {
            if (isLead(slices.get(i))) {
                now = i;
            }
        }
        if (!slices.isEmpty()) {
            select(slices.get(now < 0 ? 0 : Math.max(0, Math.min(slices.size() - 1, now + by))));
        }
    }

    private boolean isLead(Slice slice) {
        return session.selection().place() == slice.place()
                && session.selection().lead().equals(Optional.of(slice.id()));
    }

    private void select(Slice slice) {
        session.select(Selection.of(slice.place(), slice.id()));
    }

    private void describe() {
        getAccessibleContext().setAccessibleDescription(sketch().description());
        revalidate();
    }

    private BudgetSketch sketch() {
        return new BudgetSketch(
                session.plan(),
                palette.get(),
                texts,
                getFontMetrics(UIManager.getFont("Label.font")),
                getWidth(),
                getHeight());
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return sketch().at(event.getPoint()).map(this::said).orElse(null);
    }

    private String said(Slice slice) {
        String height = session.shown().shown().height(slice.to() - slice.from());
        return texts.words().name(slice.block().block()) + ", " + height;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        Smooth.both(g);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Ground.fill(g, this, palette.get().paper());
        g.setFont(UIManager.getFont("Label.font"));
        sketch().paint(g, session.selection());
        if (isFocusOwner()) {
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.setStroke(new BasicStroke(2));
            g.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
        }
        g.dispose();
    }

    /** Another width may need another number of rows for the words. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
        }
    }

    /** As high as its words need. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(300, sketch().leastHeight());
    }
}

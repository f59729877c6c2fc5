package thrumwright.editor.canvas;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.JTextField;
import javax.swing.UIManager;
import thrumwright.block.Block;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.WhenWanted;
import thrumwright.piece.Place;

/**
 * Types an amount right on the label: Enter takes it over, Escape gives it up. What can't be taken stays there, with the
 * reason below.
 */
public final class AmountEntry {
    private final LabelColumn column;
    private final PieceCanvas canvas;
    private final Session session;
    private final Edits edits;
    private final WhenWanted<Typing> typing = new WhenWanted<>();
    private Entered entered = new Entered(Place.START, "");

    /** The block whose amount is entered. */
    private record Entered(Place place, String id) {}

    public AmountEntry(LabelColumn column, PieceCanvas canvas, Edits edits) {
        this.column = column;
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = edits;
        canvas.whenMapChanges(this::follow);
    }

    /** What is typed into, and the reason why it can't be taken. */
    private record Typing(JTextField field, Prose reason) {}

    /** Made when an amount is first typed. */
    private Typing made() {
        Typing made = new Typing(new JTextField(), new Prose(""));
        made.field().setName("amountEntry");
        made.field().getAccessibleContext().setAccessibleName(canvas.texts().say("field.block.amount"));
        made.reason().setName("amountEntry.reason");
        made.reason().setOpaque(true);
        made.field().setVisible(false);
        made.reason().setVisible(false);
        column.add(made.field());
        column.add(made.reason());
        column.setComponentZOrder(made.field(), 0);
        column.setComponentZOrder(made.reason(), 0);
        listen(made.field());
        return made;
    }

    private void listen(JTextField field) {
        field.addActionListener(event -> take());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (field.isVisible() && !event.isTemporary()) {
                    take();
                }
            }
        });
        field.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (event.getKeyCode() == KeyEvent.VK_ESCAPE) {
                    close();
                }
            }
        });
    }

    private JTextField field() {
        return typing.get(this::made).field();
    }

    private Prose reason() {
        return typing.get(this::made).reason();
    }

    private boolean isOpen() {
        return typing.made().filter(made -> made.field().isVisible()).isPresent();
    }

    /**
     * Opens on the block that leads the selection, if it has an amount that can be changed. Another one that is still open
     * and can't be taken stays instead, so that what was typed isn't lost.
     */
    public void open() {
        take();
        if (isOpen()) {
            field().requestFocusInWindow();
            return;
        }
        Place place = session.selection().place();
        boolean fixed = place == Place.TOP && session.piece().topFollows();
        session.selection()
                .leadIn(session.piece())
                .filter(block -> Amounts.has(block) && !fixed)
                .ifPresent(this::open);
    }

    private void open(Block block) {
        entered = new Entered(session.selection().place(), block.id());
        field().putClientProperty(FlatClientProperties.OUTLINE, null);
        field().setText(Amounts.text(block));
        reason().setVisible(false);
        field().setVisible(true);
        follow();
        field().selectAll();
        field().requestFocusInWindow();
    }

    private void follow() {
        if (!isOpen()) {
            return;
        }
        column.amountBox(entered.place(), entered.id()).ifPresentOrElse(this::put, this::close);
    }

    private void put(Rectangle box) {
        int width = Math.max(box.width + 26, 90);
        int height = field().getPreferredSize().height;
        field().setBounds((int) box.getMaxX() - width + 8, (int) box.getCenterY() - height / 2, width, height);
        if (reason().isVisible()) {
            int wide = Math.max(140, column.getWidth() - 16);
            reason().setSize(wide, 10);
            int high = reason().getPreferredSize().height;
            int below = (int) box.getCenterY() + height / 2 + 2;
            int y = below + high <= column.getHeight() ? below : (int) box.getCenterY() - height / 2 - 2 - high;
            reason().setBounds(8, y, wide, high);
        }
    }

    /** Takes over what is typed, if anything is. */
    public void take() {
        if (!isOpen()) {
            return;
        }
        try {
            Place place = entered.place();
            session.piece()
                    .block(place, entered.id())
                    .filter(now -> !field().getText().strip().equals(Amounts.text(now)))
                    .ifPresent(now -> session.edit(
                            edits.amount(place, now, Amounts.with(now, field().getText(), session.piece(), place))));
            close();
        } catch (IllegalArgumentException e) {
            refuse(e.getMessage());
        }
    }

    private void refuse(String why) {
        field().putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
        field().getAccessibleContext().setAccessibleDescription(why);
        Color colour = UIManager.getColor("Thrumwright.reason");
        reason().setText(why);
        reason().setForeground(colour);
        reason().setBackground(UIManager.getColor("Panel.background"));
        reason().setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(colour),
                BorderFactory.createEmptyBorder(Pixels.of(3), Pixels.of(6), Pixels.of(3), Pixels.of(6))));
        reason().setVisible(true);
        follow();
    }

    private void close() {
        boolean had = field().isFocusOwner();
        field().setVisible(false);
        reason().setVisible(false);
        column.repaint();
        if (had) {
            canvas.requestFocusInWindow();
        }
    }
}

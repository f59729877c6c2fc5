package thrumwright.editor.canvas;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import thrumwright.editor.canvas.painted.Showing;
import thrumwright.editor.canvas.painted.SideNotes;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.MeasureEdits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.WhenWanted;
import thrumwright.measure.Length;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;

/**
 * Types over a measure beside the picture where it stands: Enter takes it, Escape gives it up; what can't be taken stays, with
 * the reason as the field's tip.
 */
final class FigureEntry {
    /** Wider than the figure by so much, pixels. */
    private static final int WIDER = 24;

    private static final int LEAST = 90;

    private final PieceCanvas canvas;
    private final Session session;
    private final MeasureEdits edits;
    private final WhenWanted<JTextField> typing = new WhenWanted<>();
    private Optional<Opened> opened = Optional.empty();

    /** What is typed over, and what stood there. */
    private record Opened(SideNotes.Figure figure, String before) {}

    FigureEntry(PieceCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.edits = new MeasureEdits(
                new Edits(canvas.texts().phrases(), canvas.texts().words()));
    }

    /** Made when a figure is first typed over. */
    private JTextField field() {
        return typing.get(this::made);
    }

    private JTextField made() {
        JTextField field = new JTextField();
        field.setName("figureEntry");
        field.setVisible(false);
        field.addActionListener(event -> take());
        field.registerKeyboardAction(event -> close(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_FOCUSED);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    take();
                }
            }
        });
        canvas.add(field);
        canvas.whenMapChanges(() -> field.setVisible(field.isVisible() && field.isFocusOwner()));
        return field;
    }

    /** What opens the figure at a point of the canvas; empty where there is none. */
    Optional<Runnable> at(Point point) {
        Showing showing = canvas.showing();
        return showing.widths()
                .flatMap(widths -> SideNotes.at(showing, canvas.getFontMetrics(widths.font()), point))
                .map(figure -> () -> open(figure));
    }

    private void open(SideNotes.Figure figure) {
        String before = session.shown().shown().height(now(session.plan(), figure));
        opened = Optional.of(new Opened(figure, before));
        JTextField field = field();
        put(field, figure.box());
        field.putClientProperty(FlatClientProperties.OUTLINE, null);
        field.setToolTipText(null);
        field.getAccessibleContext().setAccessibleName(label(figure));
        field.setText(before);
        field.setVisible(true);
        field.selectAll();
        field.requestFocusInWindow();
    }

    private void put(JTextField field, Rectangle box) {
        int high = field.getPreferredSize().height;
        int wide = Math.max(LEAST, box.width + WIDER);
        int left = Math.max(canvas.getVisibleRect().x, (int) box.getMaxX() - wide);
        field.setBounds(left, box.y + (box.height - high) / 2, wide, high);
    }

    private String label(SideNotes.Figure figure) {
        return canvas.texts()
                .say(
                        switch (figure.measure()) {
                            case HANDS -> "field.loom.room";
                            case BELOW -> "field.loom.clearance";
                            default -> "canvas.hem.deep";
                        });
    }

    private static double now(Plan plan, SideNotes.Figure figure) {
        return switch (figure.measure()) {
            case HANDS -> plan.budget().workingRoom();
            case BELOW -> plan.budget().clearance();
            default -> plan.end(figure.place()).hem().map(Hem::depth).orElse(0.0);
        };
    }

    private void take() {
        JTextField field = field();
        if (!field.isVisible()) {
            return;
        }
        try {
            opened.filter(one -> !field.getText().strip().equals(one.before()))
                    .flatMap(one -> edit(one.figure(), typed(field)))
                    .ifPresent(session::edit);
            close();
        } catch (IllegalArgumentException e) {
            field.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
            field.setToolTipText(e.getMessage());
            field.getAccessibleContext().setAccessibleDescription(e.getMessage());
        }
    }

    private Length typed(JTextField field) {
        return Length.parse(field.getText(), session.piece().habits().units().usual());
    }

    private Optional<Edit> edit(SideNotes.Figure figure, Length typed) {
        return switch (figure.measure()) {
            case HANDS -> Optional.of(edits.hands(typed, label(figure)));
            case BELOW -> Optional.of(edits.below(typed, label(figure)));
            default -> edits.hemDepth(session.plan(), figure.place(), typed);
        };
    }

    private void close() {
        JTextField field = field();
        boolean had = field.isFocusOwner();
        field.setVisible(false);
        if (had) {
            canvas.requestFocusInWindow();
        }
    }
}

package thrumwright.editor.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Change;
import thrumwright.editor.look.Modal;

/** What was measured of one step, typed at the loom: large, and what it means at once. */
public final class MeasuredDialog {
    private final Modal<Boolean> modal;
    private final FieldPanel panel;
    private final Runnable noLonger;

    /**
     * @param step its key
     * @param title the step as it is called
     * @param type size of its letters, pixels, more than 0
     * @param target the least side of what is pressed, pixels, more than 0
     */
    public MeasuredDialog(Component parent, Desk desk, String step, String title, float type, int target) {
        this.modal = new Modal<>(parent, "measured", title);
        this.panel = new FieldPanel(desk);
        new MeasuredFields(desk, panel, step).add();
        this.noLonger = desk.session().listen(change -> {
            if (change == Change.PIECE) {
                panel.refresh();
                larger(panel, type, target);
            }
        });
        JButton close = new JButton(desk.texts().say("measured.close"));
        close.setName("measured.close");
        close.addActionListener(event -> modal.close());
        JPanel all = new JPanel(new MigLayout("insets 12, wrap 1, fillx", "[grow, fill]"));
        // with room for what it will say
        all.add(panel, "wmin " + 30 * type + ", hmin " + 20 * type);
        all.add(close, "grow 0, right");
        larger(all, type, target);
        modal.fill(all, close);
    }

    private static void larger(Container all, float type, int target) {
        for (Component part : all.getComponents()) {
            Font font = part.getFont();
            if (font != null && font.getSize2D() != type) {
                part.setFont(font.deriveFont(type));
            }
            if (part instanceof AbstractButton || part instanceof JTextComponent text && text.isEditable()) {
                Dimension wanted = part.getPreferredSize();
                part.setMinimumSize(new Dimension(0, Math.max(target, wanted.height)));
            }
            if (part instanceof Container inner) {
                larger(inner, type, target);
            }
        }
    }

    /** Returns when it is closed; what was typed is taken over as it was typed. */
    public void ask() {
        modal.ask();
        panel.takeOver();
        noLonger.run();
    }
}

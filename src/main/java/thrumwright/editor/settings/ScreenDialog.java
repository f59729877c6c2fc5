package thrumwright.editor.settings;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;

/** Measures a screen with a ruler: a bar is made exactly 10 cm or 4 in long. */
public final class ScreenDialog {
    /** Pixels to the inch of the coarsest and of the finest screen that can be measured. */
    private static final int COARSEST = 50;

    private static final int FINEST = 220;

    private final Modal<Double> modal;
    private final double mm;
    private final JSlider slider;
    private final Bar bar = new Bar();

    /** @param pixels per mm, more than 0, as far as is known */
    public ScreenDialog(Component parent, Texts texts, UnitSystem units, double pixels) {
        this.mm = units == UnitSystem.INCHES ? 4 * Unit.INCH.millimetres() : 100;
        this.modal = new Modal<>(parent, "screen", texts.say("screen.title"));
        double inches = mm / Unit.INCH.millimetres();
        this.slider = new JSlider((int) (COARSEST * inches), (int) (FINEST * inches));
        slider.setValue((int) Math.round(pixels * mm));
        slider.setName("screen.length");
        slider.getAccessibleContext().setAccessibleName(texts.say("screen.length"));
        slider.addChangeListener(event -> bar.repaint());
        JButton done = new JButton(texts.say("screen.done"));
        done.setName("screen.done");
        done.addActionListener(event -> done());
        JButton cancel = new JButton(texts.say("screen.cancel"));
        cancel.addActionListener(event -> modal.close());
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fillx", "[grow, fill]"));
        Prose how = new Prose(texts.say(units == UnitSystem.INCHES ? "screen.how.inches" : "screen.how.metric"));
        how.setSize(slider.getMaximum(), 1);
        panel.add(how, "w 100:" + slider.getMaximum() + ":");
        panel.add(bar, "gaptop 8, gapbottom 4");
        panel.add(slider);
        panel.add(cancel, "split 2, gaptop 10, gapbefore push, grow 0, aligny center");
        panel.add(done, "gaptop 10, grow 0, aligny center");
        modal.fill(panel, done);
    }

    private void done() {
        modal.answer(slider.getValue() / mm);
    }

    /** Pixels per mm; empty if the weaver gave it up. */
    public Optional<Double> ask() {
        return modal.ask();
    }

    /** As long as the slider says, from outer edge to outer edge. */
    private final class Bar extends JComponent {
        private static final long serialVersionUID = 1L;
        private static final int HEIGHT = 40;

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(slider.getMaximum() + 2, HEIGHT);
        }

        @Override
        protected void paintComponent(Graphics g) {
            int length = slider.getValue();
            int left = (getWidth() - length) / 2;
            g.setColor(UIManager.getColor("Label.foreground"));
            g.fillRect(left, HEIGHT / 2 - 2, length, 4);
            g.fillRect(left, 0, 2, HEIGHT);
            g.fillRect(left + length - 2, 0, 2, HEIGHT);
        }
    }
}

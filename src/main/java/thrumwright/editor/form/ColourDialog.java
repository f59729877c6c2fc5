package thrumwright.editor.form;

import java.awt.Color;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.look.Typed;
import thrumwright.editor.text.Texts;
import thrumwright.measure.BadMeasure;
import thrumwright.yarn.Colour;

/** Asks for a yarn's colour: by dye or fleece, in shades of it, from a picture, or as a number. */
final class ColourDialog {
    private static final int COLUMNS = 4;

    private final Texts texts;
    private final Modal<Colour> modal;
    private final JPanel seen = new JPanel();
    private final JTextField number = new JTextField(8);
    private final List<JButton> shades = new ArrayList<>();
    private final Prose refused = new Prose("").in("Thrumwright.reason");
    private Colour chosen;

    ColourDialog(Component parent, Texts texts, Colour now) {
        this.texts = texts;
        this.chosen = now;
        this.modal = new Modal<>(parent, "colour", texts.say("colour.title"));
        JButton take = button("colour.take", () -> modal.answer(chosen));
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fillx, hidemode 3", "[grow, fill]"));
        panel.add(dyes());
        panel.add(new JLabel(texts.say("colour.shades")), "gaptop 8");
        panel.add(shades());
        panel.add(
                button("colour.picture", () -> new PicturePicker(modal.component(), texts).ask(this::choose)),
                "split 3, gaptop 8, grow 0");
        JLabel asNumber = new JLabel(texts.say("colour.number"));
        asNumber.setLabelFor(number);
        panel.add(asNumber, "gapbefore push, grow 0");
        panel.add(number, "grow 0");
        panel.add(refused);
        panel.add(button("colour.cancel", modal::close), "split 2, gaptop 10, gapbefore push, grow 0");
        panel.add(take, "grow 0");
        number.setName("colour.number");
        Typed.in(number, this::typed);
        choose(now);
        modal.fill(panel, take);
    }

    private JButton button(String key, Runnable run) {
        JButton button = new JButton(texts.say(key));
        button.setName(key);
        button.addActionListener(event -> run.run());
        return button;
    }

    private JPanel dyes() {
        JPanel grid = new JPanel(new MigLayout("insets 0, gap 4, wrap " + COLUMNS, "[sg, fill]"));
        for (DyeColour dye : DyeColour.values()) {
            JButton button = patch(texts.name("dye", dye), dye.colour(), this::choose);
            button.setName("dye." + dye.name());
            button.setHorizontalAlignment(JButton.LEADING);
            grid.add(button);
        }
        return grid;
    }

    private static JButton patch(String name, Colour colour, Consumer<Colour> chosen) {
        JButton button = new JButton(name, new Swatch(colour));
        button.addActionListener(event -> chosen.accept(colour));
        return button;
    }

    private JPanel shades() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 4", "[grow, fill]"));
        for (int i = 0; i < Shades.of(chosen).size(); i++) {
            int at = i;
            JButton button = new JButton();
            button.setName("shade." + i);
            button.addActionListener(event -> take(Shades.of(chosen).get(at)));
            shades.add(button);
            row.add(button);
        }
        seen.setName("colour.seen");
        seen.setBorder(BorderFactory.createLineBorder(UIManager.getColor("Label.foreground")));
        row.add(seen, "w " + Pixels.of(60) + "!, grow");
        return row;
    }

    /** A hue, with its shades. */
    private void choose(Colour colour) {
        chosen = colour;
        List<Colour> all = Shades.of(colour);
        for (int i = 0; i < all.size(); i++) {
            shades.get(i).setIcon(new Swatch(all.get(i)));
            shades.get(i).getAccessibleContext().setAccessibleName(all.get(i).text());
        }
        show(colour);
        number.setText(colour.text());
    }

    private void take(Colour shade) {
        choose(shade);
    }

    private void show(Colour colour) {
        seen.setBackground(new Color(colour.rgb()));
        refused.setText("");
    }

    private void typed() {
        try {
            chosen = Colour.parse(number.getText().strip());
            show(chosen);
        } catch (BadMeasure e) {
            refused.setText(e.getMessage());
        }
    }

    Optional<Colour> ask() {
        return modal.ask();
    }
}

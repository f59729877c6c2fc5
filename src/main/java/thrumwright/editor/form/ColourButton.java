package thrumwright.editor.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import java.util.Map;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JTextField;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.BadMeasure;
import thrumwright.yarn.Colour;

/** A button in a colour field that shows its colour and lets the weaver pick another. */
record ColourButton(Desk desk) {
    /** Reached by Tab, unlike other buttons in fields; with the field around it large enough to be met. */
    private static final Map<String, Object> BUTTON =
            Map.of("focusable", true, "toolbar.margin", new Insets(1, 6, 1, 6));

    private static final String AROUND = "margin: 3,6,3,6";

    void addTo(JTextField field) {
        JButton button = new JButton(new Shown(field));
        button.setName("pickColour");
        button.setToolTipText(desk.texts().say("yarn.colour.pick"));
        button.getAccessibleContext().setAccessibleName(desk.texts().say("yarn.colour.pick"));
        button.addActionListener(event -> {
            new ColourDialog(field, desk.texts(), colour(field)).ask().ifPresent(other -> {
                field.setText(other.text());
                desk.takeOver();
            });
        });
        button.putClientProperty(FlatClientProperties.STYLE, BUTTON);
        field.putClientProperty(FlatClientProperties.STYLE, AROUND);
        field.putClientProperty(FlatClientProperties.TEXT_FIELD_TRAILING_COMPONENT, button);
    }

    private static Colour colour(JTextField field) {
        try {
            return Colour.parse(field.getText().strip());
        } catch (BadMeasure e) {
            return new Colour(0x808080);
        }
    }

    private record Shown(JTextField field) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics g, int x, int y) {
            new Swatch(colour(field)).paintIcon(c, g, x, y);
        }

        @Override
        public int getIconWidth() {
            return new Swatch(new Colour(0)).getIconWidth();
        }

        @Override
        public int getIconHeight() {
            return new Swatch(new Colour(0)).getIconHeight();
        }
    }
}

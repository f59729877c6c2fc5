package thrumwright.editor.files;

import java.awt.Component;
import java.awt.Graphics;
import java.util.Locale;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.files.Questions.Welcome;
import thrumwright.editor.library.StructurePicture;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Place;
import thrumwright.plan.finding.StructureFit;

/** Asks by pictures what to begin with, when the program is started for the first time. */
final class WelcomeDialog {
    private static final int WIDE = 200;
    private static final int HIGH = 140;
    private static final int FILE_ICON = 96;
    /** Shown for a piece of one's own, since it looks like none of the first. */
    private static final String HEM = "folded-hem";

    private final Workplace room;
    private final Texts texts;
    private final Modal<Welcome> modal;

    WelcomeDialog(Component parent, Workplace room) {
        this.room = room;
        this.texts = room.texts();
        this.modal = new Modal<>(parent, "welcome", texts.say("welcome.title"));
        JButton first = choice(Welcome.FIRST_PANEL, structure(Beginnings.FIRST_PANEL));
        JPanel panel = new JPanel(new MigLayout("insets 20, wrap 3, gapx 16", "[sg, fill][sg, fill][sg, fill]"));
        panel.add(Prose.heading(texts.say("welcome.heading")), "span 3, gapbottom 8");
        panel.add(first);
        panel.add(choice(Welcome.OWN, structure(HEM)));
        panel.add(choice(Welcome.OPEN, new Middle(Icons.drawn("thrumwright-file", FILE_ICON))));
        for (Welcome each : new Welcome[] {Welcome.FIRST_PANEL, Welcome.OWN, Welcome.OPEN}) {
            panel.add(new Prose(texts.say(key(each) + ".does")), "aligny top, w 120::" + WIDE);
        }
        panel.add(plain(Welcome.DEMO), "span 3, split 2, gaptop 12, h pref!, grow 0");
        JButton later = new JButton(texts.say("welcome.later"));
        later.setName("welcome.later");
        later.addActionListener(event -> modal.close());
        panel.add(later, "gapbefore push, gaptop 12, h pref!, grow 0");
        modal.fill(panel, first);
    }

    private static String key(Welcome step) {
        return "welcome." + step.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private JButton plain(Welcome step) {
        JButton button = new JButton(texts.say(key(step)));
        button.setName(key(step));
        button.addActionListener(event -> modal.answer(step));
        return button;
    }

    private JButton choice(Welcome step, Icon picture) {
        JButton button = plain(step);
        button.setIcon(picture);
        button.setVerticalTextPosition(SwingConstants.BOTTOM);
        button.setHorizontalTextPosition(SwingConstants.CENTER);
        button.setIconTextGap(Pixels.of(8));
        button.getAccessibleContext().setAccessibleDescription(texts.say(key(step) + ".does"));
        return button;
    }

    private Icon structure(String id) {
        StructurePicture picture = new StructurePicture(room.theme().palette());
        picture.setSize(Pixels.of(WIDE), Pixels.of(HIGH));
        room.library()
                .byId(id)
                .ifPresent(each -> picture.show(
                        StructureFit.of(each, Beginnings.empty(UnitSystem.METRIC), Place.START), each.name()));
        return new Painted(picture);
    }

    Optional<Welcome> ask() {
        return modal.ask();
    }

    /** A component as a picture, as sharp as the screen. */
    private record Painted(JComponent component) implements Icon {
        @Override
        public void paintIcon(Component button, Graphics graphics, int x, int y) {
            Graphics inside = graphics.create(x, y, getIconWidth(), getIconHeight());
            component.paint(inside);
            inside.dispose();
        }

        @Override
        public int getIconWidth() {
            return component.getWidth();
        }

        @Override
        public int getIconHeight() {
            return component.getHeight();
        }
    }

    /** A small picture with as much room as the others take. */
    private record Middle(Icon small) implements Icon {
        @Override
        public void paintIcon(Component button, Graphics graphics, int x, int y) {
            int left = x + (getIconWidth() - small.getIconWidth()) / 2;
            small.paintIcon(button, graphics, left, y + (getIconHeight() - small.getIconHeight()) / 2);
        }

        @Override
        public int getIconWidth() {
            return Pixels.of(WIDE);
        }

        @Override
        public int getIconHeight() {
            return Pixels.of(HIGH);
        }
    }
}

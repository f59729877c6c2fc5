package thrumwright.editor.window;

import java.awt.Component;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Prose;
import thrumwright.editor.loom.Stillness;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;

/** How somebody likes to have the program itself, whatever the piece; what is chosen counts at once. */
public final class SettingsDialog {
    private final Modal<Void> modal;

    /**
     * @param parent the window that it stands over
     * @param measure the screen
     */
    public SettingsDialog(Component parent, Workplace room, Action measure) {
        Texts texts = room.texts();
        this.modal = new Modal<>(parent, "settings", texts.say("settings.title"));
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fillx", "[360::, grow, fill]"));
        panel.add(Prose.heading(texts.say("menu.looks")));
        new LookChoice(room, JRadioButton::new).buttons().forEach(panel::add);
        panel.add(Prose.heading(texts.say("settings.loom")), "gaptop 10");
        panel.add(moving(new Stillness(room.settings()), texts));
        panel.add(Prose.heading(texts.say("settings.screen")), "gaptop 10");
        panel.add(new Prose(texts.say("settings.screen.why")));
        JButton screen = new JButton(measure);
        screen.setName("settings.screen");
        panel.add(screen, "grow 0");
        JButton close = new JButton(texts.say("settings.close"));
        close.setName("settings.close");
        close.addActionListener(event -> modal.close());
        panel.add(close, "gaptop 14, gapbefore push, grow 0");
        modal.fill(panel, close);
    }

    private static JCheckBox moving(Stillness stillness, Texts texts) {
        JCheckBox moving = new JCheckBox(texts.say("settings.moving"), stillness.moving());
        moving.setName("settings.moving");
        moving.addActionListener(event -> stillness.choose(moving.isSelected()));
        return moving;
    }

    public void show() {
        modal.ask();
    }
}

package thrumwright.editor.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.AbstractButton;
import javax.swing.ButtonGroup;
import thrumwright.editor.look.Theme;
import thrumwright.editor.settings.Workplace;

/** Light, dark, high contrast or as the system: one button each, one of them pressed. */
public final class LookChoice {
    private final Workplace room;
    private final ButtonGroup group = new ButtonGroup();
    private final List<AbstractButton> buttons = new ArrayList<>();

    /** @param button makes one with its text */
    public LookChoice(Workplace room, Function<String, AbstractButton> button) {
        this.room = room;
        for (Theme theme : Theme.values()) {
            add(button.apply(room.texts().name("theme", theme)), theme.name(), () -> room.setTheme(theme));
        }
        add(button.apply(room.texts().say("theme.system")), "SYSTEM", room::followSystem);
        refresh();
    }

    private void add(AbstractButton button, String name, Runnable choose) {
        button.setName("theme." + name);
        button.addActionListener(event -> choose.run());
        group.add(button);
        buttons.add(button);
    }

    /** In the order of {@link Theme}, and as the system at last. */
    public List<AbstractButton> buttons() {
        return buttons;
    }

    /** Presses the one that counts, since it can be chosen elsewhere too. */
    public void refresh() {
        int at = room.followsSystem() ? buttons.size() - 1 : room.theme().ordinal();
        group.setSelected(buttons.get(at).getModel(), true);
    }
}

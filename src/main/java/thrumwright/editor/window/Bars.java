package thrumwright.editor.window;

import java.awt.event.KeyEvent;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;

/**
 * Menus and buttons from the ids of commands; every window makes its own with them.
 *
 * @param commands of the window
 */
public record Bars(Commands commands, Texts texts) {
    /** @param ids in order; null is a line between two groups */
    public JMenu menu(String key, String... ids) {
        JMenu menu = new JMenu(texts.say(key));
        menu.setName(key);
        menu.setMnemonic(texts.say(key).charAt(0));
        add(menu, ids);
        return menu;
    }

    /** @param ids in order; null is a line between two groups */
    public void add(JMenu menu, String... ids) {
        for (String id : ids) {
            if (id == null) {
                menu.addSeparator();
            } else {
                menu.add(item(id));
            }
        }
    }

    public JMenuItem item(String id) {
        JMenuItem item = item(commands.get(id), commands.onCanvas(id));
        item.setName("menu." + id);
        return item;
    }

    private static JMenuItem item(Action action, boolean onCanvas) {
        if (action.getValue(Action.SELECTED_KEY) != null) {
            return new JCheckBoxMenuItem(action);
        }
        return onCanvas ? new ShownOnly(action) : new JMenuItem(action);
    }

    /**
     * @param id null for a line between two groups
     * @param withText whether its name stands beside its picture
     */
    public void button(JToolBar bar, String id, boolean withText) {
        if (id == null) {
            bar.addSeparator();
            return;
        }
        JButton button = bar.add(commands.get(id));
        button.setName("tool." + id);
        button.setFocusable(true);
        button.setHideActionText(!withText);
        button.setHorizontalTextPosition(SwingConstants.TRAILING);
        button.setVerticalTextPosition(SwingConstants.CENTER);
        button.getAccessibleContext()
                .setAccessibleName((String) button.getAction().getValue(Action.NAME));
    }

    /** Shows its key, which counts on the canvas only: in a list or a field it means something else. */
    private static final class ShownOnly extends JMenuItem {
        private static final long serialVersionUID = 1L;

        ShownOnly(Action action) {
            super(action);
        }

        @Override
        protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
            return false;
        }
    }
}

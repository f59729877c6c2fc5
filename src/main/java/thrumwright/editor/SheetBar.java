package thrumwright.editor;

import javax.swing.Action;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JToolBar;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;

/** The menus and buttons of the window that shows a step sheet, and which page is looked at. */
final class SheetBar {
    private final Commands commands;
    private final Texts texts;
    private final JLabel where = new JLabel();

    SheetBar(Commands commands, Texts texts) {
        this.commands = commands;
        this.texts = texts;
        where.setName("page");
    }

    JMenuBar menus() {
        JMenuBar bar = new JMenuBar();
        bar.add(menu("menu.sheet", "sheet-print", "sheet-export", null, "sheet-close"));
        bar.add(menu(
                "menu.view",
                "sheet-closer",
                "sheet-farther",
                null,
                "sheet-whole",
                "sheet-width",
                "sheet-true-size",
                null,
                "sheet-before",
                "sheet-next",
                "sheet-first",
                "sheet-last"));
        return bar;
    }

    private JMenu menu(String key, String... ids) {
        JMenu menu = new JMenu(texts.say(key));
        menu.setName(key);
        menu.setMnemonic(texts.say(key).charAt(0));
        for (String id : ids) {
            if (id == null) {
                menu.addSeparator();
            } else {
                menu.add(commands.get(id)).setName("menu." + id);
            }
        }
        return menu;
    }

    JToolBar tools() {
        JToolBar bar = new JToolBar();
        bar.setFloatable(false);
        bar.setName("sheetTools");
        button(bar, "sheet-print", true);
        button(bar, "sheet-export", true);
        bar.addSeparator();
        button(bar, "sheet-farther", false);
        button(bar, "sheet-closer", false);
        button(bar, "sheet-whole", false);
        button(bar, "sheet-width", false);
        button(bar, "sheet-true-size", false);
        bar.add(Box.createHorizontalGlue());
        button(bar, "sheet-before", false);
        bar.add(where);
        button(bar, "sheet-next", false);
        return bar;
    }

    private void button(JToolBar bar, String id, boolean withText) {
        Action action = commands.get(id);
        JButton button = bar.add(action);
        button.setName("tool." + id);
        button.setFocusable(true);
        button.setHideActionText(!withText);
        button.setHorizontalTextPosition(JButton.TRAILING);
        button.setVerticalTextPosition(JButton.CENTER);
        button.getAccessibleContext().setAccessibleName((String) action.getValue(Action.NAME));
    }

    /** Says which page is looked at. */
    void say(String page) {
        where.setText(page);
    }
}

package thrumwright.editor;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.Action;
import javax.swing.Box;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import thrumwright.block.Block;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.plan.Words;

/** The menus and the row of buttons. */
final class Menus {
    private final Commands commands;
    private final Texts texts;

    Menus(Commands commands, Texts texts) {
        this.commands = commands;
        this.texts = texts;
    }

    JMenuBar bar(Workroom room, FileWork files) {
        JMenuBar bar = new JMenuBar();
        JMenu file = menu("menu.file", "new", "open");
        file.add(recent(room, files));
        add(file, null, "save", "save-as", null, "sheet", "print", "export", "class", null, "close");
        bar.add(file);
        bar.add(menu(
                "menu.edit",
                "undo",
                "redo",
                "history",
                null,
                "cut",
                "copy",
                "paste",
                "duplicate",
                "delete",
                null,
                "select-all"));
        JMenu block = menu("menu.block");
        block.add(kinds());
        add(
                block,
                null,
                "shelf",
                "amount",
                "up",
                "down",
                null,
                "top-follows",
                "top-own",
                null,
                "use-structure",
                "keep-structure",
                "write-structure",
                "import-structure");
        bar.add(block);
        JMenu view = menu(
                "menu.view",
                "closer",
                "farther",
                null,
                "fit-piece",
                "fit-width",
                "fit-end",
                "fit-start",
                "fit-top",
                "single-ends",
                null,
                "true-size",
                "measure-screen",
                null,
                "shelf-fold",
                "rules",
                null);
        ButtonGroup themes = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(texts.name("theme", theme), room.theme() == theme);
            item.setName("theme." + theme.name());
            item.addActionListener(event -> room.setTheme(theme));
            themes.add(item);
            view.add(item);
        }
        bar.add(view);
        return bar;
    }

    private JMenu recent(Workroom room, FileWork files) {
        JMenu recent = new JMenu(texts.say("menu.recent"));
        recent.setName("recent");
        recent.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                recent.removeAll();
                for (Path path : room.settings().recent()) {
                    JMenuItem item = new JMenuItem(path.getFileName() + " — " + path.getParent());
                    item.addActionListener(chosen -> files.open(path));
                    recent.add(item);
                }
                if (recent.getItemCount() == 0) {
                    recent.add(new JMenuItem(texts.say("menu.recent.none"))).setEnabled(false);
                }
            }

            @Override
            public void menuDeselected(MenuEvent event) {
                // The next time it is filled anew.
            }

            @Override
            public void menuCanceled(MenuEvent event) {
                // The next time it is filled anew.
            }
        });
        return recent;
    }

    private JMenu menu(String key, String... ids) {
        JMenu menu = new JMenu(texts.say(key));
        menu.setName(key);
        menu.setMnemonic(texts.say(key).charAt(0));
        add(menu, ids);
        return menu;
    }

    private void add(JMenu menu, String... ids) {
        for (String id : ids) {
            if (id == null) {
                menu.addSeparator();
            } else {
                menu.add(item(id));
            }
        }
    }

    private JMenuItem item(String id) {
        JMenuItem item = commands.onCanvas(id) ? new ShownOnly(commands.get(id)) : new JMenuItem(commands.get(id));
        item.setName("menu." + id);
        return item;
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

    /** All kinds in a menu of their own, since with them the one around it would be higher than a small screen. */
    private JMenu kinds() {
        JMenu kinds = new JMenu(texts.say("tool.add"));
        kinds.setName("kinds");
        addKinds(kinds.getPopupMenu());
        return kinds;
    }

    /** An item for every kind of block. */
    private void addKinds(JPopupMenu menu) {
        for (Block block : NewBlocks.all(UnitSystem.METRIC)) {
            menu.add(item("add-" + Words.key(block)));
        }
    }

    /** For a press of the other mouse button on the canvas. */
    JPopupMenu popup() {
        JPopupMenu popup = new JPopupMenu();
        popup.setName("blockMenu");
        popup.add(item("amount"));
        popup.addSeparator();
        popup.add(kinds());
        popup.addSeparator();
        for (String id : new String[] {"cut", "copy", "paste", "duplicate", "delete", null, "up", "down"}) {
            if (id == null) {
                popup.addSeparator();
            } else {
                popup.add(item(id));
            }
        }
        return popup;
    }

    JToolBar toolBar() {
        JToolBar bar = new JToolBar();
        bar.setFloatable(false);
        bar.setName("tools");
        for (String id : new String[] {"new", "open", "save", null, "undo", "redo", null}) {
            button(bar, id, false);
        }
        JButton add = new JButton(texts.say("tool.add"), thrumwright.editor.look.Icons.of("add"));
        add.setName("add");
        add.setToolTipText(texts.say("tool.add.tip"));
        JPopupMenu kinds = new JPopupMenu();
        addKinds(kinds);
        add.addActionListener(event -> kinds.show(add, 0, add.getHeight()));
        bar.add(add);
        for (String id : new String[] {"up", "down", "delete", null, "farther", "closer", "fit-piece"}) {
            button(bar, id, false);
        }
        bar.add(Box.createHorizontalGlue());
        button(bar, "sheet", true);
        return bar;
    }

    private void button(JToolBar bar, String id, boolean withText) {
        if (id == null) {
            bar.addSeparator();
            return;
        }
        Action action = commands.get(id);
        JButton button = bar.add(action);
        button.setName("tool." + id);
        button.setFocusable(true);
        button.getAccessibleContext().setAccessibleName((String) action.getValue(Action.NAME));
        if (withText) {
            button.setHideActionText(false);
            button.setHorizontalTextPosition(JButton.TRAILING);
            button.setVerticalTextPosition(JButton.CENTER);
        }
    }
}

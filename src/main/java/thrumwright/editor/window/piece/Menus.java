package thrumwright.editor.window.piece;

import java.awt.Point;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToolBar;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import net.miginfocom.swing.MigLayout;
import thrumwright.block.Block;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.look.Icons;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.Bars;
import thrumwright.editor.window.LookChoice;
import thrumwright.measure.UnitSystem;

/** The menus and the row of buttons. */
public final class Menus {
    private static final List<String> TITLES =
            List.of("menu.file", "menu.edit", "menu.block", "menu.view", "menu.help");
    private static final String FILE = "save save-as | sheet print export";
    private static final String FILE_ON = "class loom | close close-all";
    private static final String EDIT =
            "undo redo history earlier | cut copy paste duplicate delete | select-all | settings";
    private static final String BLOCK = "| shelf amount | up down | top-follows top-own"
            + " | use-structure sample-warp keep-structure write-structure import-structure";

    private final Texts texts;
    private final Bars bars;
    private final JMenuBar bar = new JMenuBar();
    private final JToolBar tools = new JToolBar();
    private final JButton add = new JButton();

    Menus(Commands commands, Texts texts) {
        this.texts = texts;
        this.bars = new Bars(commands, texts);
    }

    /** The menus' titles and the height of the row of buttons, before there is time for what they hold. */
    void layOut() {
        for (String title : TITLES) {
            bar.add(bars.menu(title));
        }
        tools.setFloatable(false);
        tools.setName("tools");
        add.setText(texts.say("tool.add"));
        add.setIcon(Icons.of("add"));
        tools.add(add);
        tools.setPreferredSize(tools.getPreferredSize());
        tools.remove(add);
    }

    JMenuBar bar() {
        return bar;
    }

    JToolBar tools() {
        return tools;
    }

    /** Fills the menus; once, as soon as all commands are known. */
    void fill(Workplace room, Consumer<Path> open) {
        file(bar.getMenu(0), room, open);
        bars.add(bar.getMenu(1), ids(EDIT));
        block(bar.getMenu(2));
        view(bar.getMenu(3), room);
        bars.add(bar.getMenu(4), "help", "keys", null, "about");
    }

    /** Ids of commands in order; a bar stands for the line between two groups, which is null. */
    private static String[] ids(String line) {
        return Stream.of(line.split(" ")).map(id -> id.equals("|") ? null : id).toArray(String[]::new);
    }

    private void file(JMenu file, Workplace room, Consumer<Path> open) {
        bars.add(file, "new", "open");
        file.add(recent(room, open));
        bars.add(file, ids(FILE));
        file.add(single());
        bars.add(file, ids(FILE_ON));
    }

    /** Parts of the sheet by themselves; in a menu of their own, as a small screen is low. */
    private JMenu single() {
        JMenu single = new JMenu(texts.say("menu.single"));
        single.setName("menu.single");
        bars.add(single, "cards", "loom-page");
        return single;
    }

    private void block(JMenu block) {
        block.add(kinds());
        bars.add(block, ids(BLOCK));
    }

    private void view(JMenu view, Workplace room) {
        bars.add(view, "closer", "farther");
        view.add(shares());
        bars.add(view, "true-size", "measure-screen", null, "views-large", "fields-shown", "shelf-fold", "rules");
        view.add(views());
        view.add(dividers());
        view.addSeparator();
        view.add(looks(room));
    }

    private JMenu looks(Workplace room) {
        JMenu looks = new JMenu(texts.say("menu.looks"));
        looks.setName("menu.looks");
        LookChoice choice = new LookChoice(room, JRadioButtonMenuItem::new);
        choice.buttons().forEach(looks::add);
        looks.addChangeListener(event -> choice.refresh());
        return looks;
    }

    /** The views below the picture, in the order of their tabs. */
    private JMenu views() {
        JMenu views = new JMenu(texts.say("menu.views"));
        views.setName("menu.views");
        bars.add(
                views,
                "views-open",
                null,
                "show-findings",
                "show-cuts",
                "show-hems",
                "show-ends",
                "show-budget",
                "show-steps",
                "history");
        return views;
    }

    /** What of the piece fills the window; in a menu of its own, as a small screen is low. */
    private JMenu shares() {
        JMenu shares = new JMenu(texts.say("menu.shares"));
        shares.setName("menu.shares");
        bars.add(shares, "fit-loom", "fit-selvedges", "fit-start", "fit-top", "single-ends", "fit-piece");
        return shares;
    }

    /** Every divider of the window can be moved without the mouse. */
    private JMenu dividers() {
        JMenu dividers = new JMenu(texts.say("menu.dividers"));
        dividers.setName("menu.dividers");
        bars.add(dividers, "divider-up", "divider-down", "divider-left", "divider-right");
        return dividers;
    }

    private JMenu recent(Workplace room, Consumer<Path> open) {
        JMenu recent = new JMenu(texts.say("menu.recent"));
        recent.setName("recent");
        recent.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                recent.removeAll();
                for (Path path : room.settings().recent()) {
                    JMenuItem item = new JMenuItem(path.getFileName() + " — " + path.getParent());
                    item.addActionListener(chosen -> open.accept(path));
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

    /** All kinds in a menu of their own, since with them the one around it would be higher than a small screen. */
    private JMenu kinds() {
        JMenu kinds = new JMenu(texts.say("tool.add"));
        kinds.setName("kinds");
        addKinds(kinds.getPopupMenu());
        return kinds;
    }

    /** An item for every kind of block, in two columns, since all in one would be higher than a small screen. */
    private void addKinds(JPopupMenu menu) {
        List<Block> kinds = NewBlocks.all(UnitSystem.METRIC);
        menu.setLayout(new MigLayout("insets 0, gap 0, flowy, wrap " + (kinds.size() + 1) / 2, "[grow, fill]"));
        for (Block block : kinds) {
            menu.add(bars.item("add-" + block.key()));
        }
    }

    /** For a press of the other mouse button on the canvas. */
    void popup(PieceCanvas canvas, Point at) {
        popup().show(canvas, at.x, at.y);
    }

    private JPopupMenu popup() {
        JPopupMenu popup = new JPopupMenu();
        popup.setName("blockMenu");
        popup.add(bars.item("amount"));
        popup.addSeparator();
        popup.add(kinds());
        popup.addSeparator();
        for (String id : new String[] {"cut", "copy", "paste", "duplicate", "delete", null, "up", "down"}) {
            if (id == null) {
                popup.addSeparator();
            } else {
                popup.add(bars.item(id));
            }
        }
        return popup;
    }

    /** Fills the row of buttons; once, as soon as all commands are known. */
    void fillTools() {
        for (String id : new String[] {"new", "open", "save", null, "undo", "redo", null}) {
            bars.button(tools, id, false);
        }
        add.setName("add");
        add.setToolTipText(texts.say("tool.add.tip"));
        JPopupMenu kinds = new JPopupMenu();
        addKinds(kinds);
        add.addActionListener(event -> kinds.show(add, 0, add.getHeight()));
        tools.add(add);
        for (String id :
                new String[] {"up", "down", "delete", null, "farther", "closer", "fit-loom", "fit-selvedges"}) {
            bars.button(tools, id, false);
        }
        tools.add(Box.createHorizontalGlue());
        bars.button(tools, "sheet", true);
        tools.setPreferredSize(null);
        tools.revalidate();
    }
}

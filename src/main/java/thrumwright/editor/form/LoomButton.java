package thrumwright.editor.form;

import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import thrumwright.editor.edit.Edit;
import thrumwright.piece.Loom;

/** Offers the looms that the weaver has for this piece. */
record LoomButton(Desk desk) {
    private static final int MOST_OFFERED = 20;

    JButton button() {
        JButton button = new JButton(desk.texts().say("loom.mine"));
        button.setName("loomShelf");
        button.setToolTipText(desk.texts().say("loom.mine.tip"));
        button.addActionListener(event -> menu().show(button, 0, button.getHeight()));
        return button;
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("loomShelf.menu");
        List<Loom> looms = desk.stash().looms();
        looms.stream().limit(MOST_OFFERED).forEach(loom -> menu.add(item(loom)));
        if (looms.isEmpty()) {
            menu.add(new JMenuItem(desk.texts().say("loom.none"))).setEnabled(false);
        }
        return menu;
    }

    private JMenuItem item(Loom loom) {
        String name = desk.texts()
                .say(
                        loom.name().isBlank() ? "loom.unnamed" : "loom.named",
                        Map.of("name", loom.name(), "open", loom.open()));
        JMenuItem item = new JMenuItem(name);
        item.addActionListener(event -> desk.session()
                .edit(Edit.of(desk.texts().say("edit.loom", Map.of("loom", name)), piece -> piece.withLoom(loom))));
        return item;
    }
}

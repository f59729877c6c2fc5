package thrumwright.editor.window.sheet;

import javax.swing.Box;
import javax.swing.JLabel;
import javax.swing.JMenuBar;
import javax.swing.JToolBar;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.Bars;

/** The menus and buttons of the window that shows a step sheet, and which page is looked at. */
final class SheetBar {
    private final Bars bars;
    private final JLabel where = new JLabel();

    SheetBar(Commands commands, Texts texts) {
        this.bars = new Bars(commands, texts);
        where.setName("page");
    }

    JMenuBar menus() {
        JMenuBar bar = new JMenuBar();
        bar.add(bars.menu("menu.sheet", "sheet-print", "sheet-export", null, "sheet-close"));
        bar.add(bars.menu(
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

    JToolBar tools() {
        JToolBar bar = new JToolBar();
        bar.setFloatable(false);
        bar.setName("sheetTools");
        bars.button(bar, "sheet-print", true);
        bars.button(bar, "sheet-export", true);
        bar.addSeparator();
        bars.button(bar, "sheet-farther", false);
        bars.button(bar, "sheet-closer", false);
        bars.button(bar, "sheet-whole", false);
        bars.button(bar, "sheet-width", false);
        bars.button(bar, "sheet-true-size", false);
        bar.add(Box.createHorizontalGlue());
        bars.button(bar, "sheet-before", false);
        bar.add(where);
        bars.button(bar, "sheet-next", false);
        return bar;
    }

    /** Says which page is looked at. */
    void say(String page) {
        where.setText(page);
    }
}

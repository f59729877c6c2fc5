package thrumwright.editor.canvas.heard;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import thrumwright.block.Row;
import thrumwright.editor.text.Texts;
import thrumwright.plan.Work;
import thrumwright.plan.words.Words;

/** One row of a block on the canvas, for those who can't see it: its number, how it meets the outermost end or leans, and the way it runs. */
final class AccessibleRow extends AccessiblePart {
    private final Texts texts;
    private final AccessiblePart block;
    private final Supplier<Optional<Work>> work;
    private final int index;

    /** @param index from 0 for the lowest */
    AccessibleRow(JComponent canvas, Texts texts, AccessiblePart block, Supplier<Optional<Work>> work, int index) {
        super(canvas);
        this.texts = texts;
        this.work = work;
        this.block = block;
        this.index = index;
        setAccessibleParent(block);
    }

    @Override
    public String getAccessibleName() {
        return texts.say("canvas.row", Map.of("number", index + 1, "block", block.getAccessibleName()));
    }

    @Override
    public String getAccessibleDescription() {
        return work.get()
                .filter(whole -> index < whole.rows().size())
                .map(whole -> says(whole.rows().get(index), whole.setting().ends()))
                .orElse("");
    }

    private String says(Row row, int ends) {
        Words words = texts.words();
        String way = texts.say("canvas.row.way", Map.of("from", words.side(row.from()), "to", words.side(row.to())));
        return words.meets(row, ends)
                .or(() -> row.lean().map(lean -> texts.name("lean", lean)))
                .map(what -> what + ", " + way)
                .orElse(way);
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST_ITEM;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return index;
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int child) {
        return null;
    }

    @Override
    public Accessible getAccessibleAt(Point point) {
        return null;
    }

    /** Its number, from 1 for the lowest. */
    @Override
    public Number getCurrentAccessibleValue() {
        return index + 1;
    }

    @Override
    public Number getMinimumAccessibleValue() {
        return 1;
    }

    @Override
    public Number getMaximumAccessibleValue() {
        return block.getAccessibleChildrenCount();
    }

    @Override
    boolean selected() {
        return block.selected();
    }

    /** Within its block, which its rows share evenly. */
    @Override
    public Rectangle getBounds() {
        Rectangle whole = block.getBounds();
        int count = Math.max(1, block.getAccessibleChildrenCount());
        int top = whole.height * (count - 1 - index) / count;
        int bottom = whole.height * (count - index) / count;
        return new Rectangle(0, top, whole.width, bottom - top);
    }

    @Override
    public Point getLocationOnScreen() {
        Point corner = block.getLocationOnScreen();
        return corner == null ? null : new Point(corner.x, corner.y + getBounds().y);
    }

    @Override
    public void requestFocus() {
        block.requestFocus();
    }
}

package thrumwright.editor.window.piece;

import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.text.Commands;

/**
 * The three parts of the window and the dividers between them: above the picture, below it the views, at the right the
 * fields. Dividers are moved by mouse or by command, and stay where they were left. Views are folded away to their row of
 * tabs until somebody wants to see one.
 */
final class Parts {
    /** How much of the height the views have at first, and how much when they are made large. */
    private static final double USUAL = 0.3;

    private static final double LARGE = 0.72;

    /** The views need so much at least, and the picture so much to be of use, pixels. */
    private static final int VIEWS = 96;

    private static final int PICTURE = 130;
    /** In a low window it must do with less. */
    private static final int LEAST_PICTURE = 90;

    private static final int MOST_AT_FIRST = 280;
    private static final int FIELDS = 290;
    private static final int FIELDS_AT_FIRST = 330;
    private static final int STEP = 24;

    private final Geometry geometry;
    private final JTabbedPane views;
    private final JComponent right;
    private final Divider down;
    private final Divider across;
    private ViewSize size;
    /** Whether they were folded away before they were made large. */
    private ViewSize before = ViewSize.FOLDED;

    /** As somebody wants them, pixels, where the window has the room; 0: as is usual. */
    private int viewsWanted;

    private int fieldsWanted;

    /** @param picture the canvas with what belongs to it */
    Parts(Geometry geometry, JComponent picture, JTabbedPane views, JComponent right) {
        this.geometry = geometry;
        this.views = views;
        this.right = right;
        picture.setMinimumSize(Pixels.of(new Dimension(160, LEAST_PICTURE)));
        views.setMinimumSize(new Dimension(Pixels.of(160), 0));
        right.setMinimumSize(Pixels.of(new Dimension(FIELDS, 100)));
        down = new Divider("canvasAndViews", JSplitPane.VERTICAL_SPLIT, picture, views);
        across = new Divider("canvasAndForms", JSplitPane.HORIZONTAL_SPLIT, down.component(), right);
        size = geometry.isSet("views.open") ? ViewSize.OPEN : ViewSize.FOLDED;
        viewsWanted = geometry.part("views");
        fieldsWanted = geometry.part("forms");
        right.setVisible(!geometry.isSet("fields.away"));
        down.divide(this::viewsHeight, this::draggedTo);
        across.divide(this::fieldsWidth, width -> fieldsWanted = right.isVisible() ? width : fieldsWanted);
    }

    JComponent component() {
        return across.component();
    }

    void addTo(Commands commands) {
        commands.addSwitch("views-large", this::toggleLarge, () -> size == ViewSize.LARGE);
        commands.addSwitch("views-open", this::toggleOpen, () -> size != ViewSize.FOLDED);
        commands.add("divider-up", () -> stepViews(STEP));
        commands.add("divider-down", () -> stepViews(-STEP));
        commands.add("divider-left", () -> stepFields(STEP), right::isVisible);
        commands.add("divider-right", () -> stepFields(-STEP), right::isVisible);
        commands.addSwitch("fields-shown", this::toggleFields, right::isVisible);
        for (Divider each : new Divider[] {across, down}) {
            each.component()
                    .addPropertyChangeListener(JSplitPane.DIVIDER_LOCATION_PROPERTY, event -> commands.refresh());
        }
        views.addChangeListener(event -> open());
        views.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (views.indexAtLocation(event.getX(), event.getY()) < 0) {
                    return;
                }
                if (event.getClickCount() == 2) {
                    commands.run("views-large");
                } else {
                    open();
                }
            }
        });
    }

    /** Unfolds the views, if they are folded away. */
    void open() {
        if (size == ViewSize.FOLDED) {
            show(ViewSize.OPEN);
        }
    }

    private void toggleOpen() {
        show(size == ViewSize.FOLDED ? ViewSize.OPEN : ViewSize.FOLDED);
    }

    /** Gives the views most of the height, or what they had before. */
    private void toggleLarge() {
        ViewSize other = size == ViewSize.LARGE ? before : ViewSize.LARGE;
        before = size;
        show(other);
    }

    private void show(ViewSize other) {
        size = other;
        down.give(viewsHeight());
    }

    /** Leaves all of the width to the picture, or brings the fields back. */
    private void toggleFields() {
        right.setVisible(!right.isVisible());
        across.give(fieldsWidth());
    }

    private void draggedTo(int height) {
        boolean folded = height < (tabs() + Pixels.of(VIEWS)) / 2;
        size = folded ? ViewSize.FOLDED : height >= large() - 2 ? ViewSize.LARGE : ViewSize.OPEN;
        viewsWanted = size == ViewSize.OPEN ? height : viewsWanted;
        if (folded) {
            down.give(tabs());
        }
    }

    private void stepViews(int by) {
        viewsWanted = inside(down.second() + Pixels.of(by));
        show(ViewSize.OPEN);
    }

    private void stepFields(int by) {
        fieldsWanted = beside(across.second() + Pixels.of(by));
        across.give(right.isVisible() ? fieldsWanted : 0);
    }

    /** As high as the views are to be now, pixels. */
    private int viewsHeight() {
        return switch (size) {
            case FOLDED -> tabs();
            case OPEN -> inside(viewsWanted > 0 ? viewsWanted : usual());
            case LARGE -> large();
        };
    }

    /** Of the row of tabs, pixels. */
    private int tabs() {
        return views.getTabCount() == 0 ? 0 : views.getBoundsAt(0).height + Pixels.of(2);
    }

    private int usual() {
        return Math.min(Pixels.of(MOST_AT_FIRST), (int) (down.whole() * USUAL));
    }

    private int large() {
        return inside((int) (down.whole() * LARGE));
    }

    private int inside(int height) {
        int picture = Math.min(Pixels.of(PICTURE), (int) (down.room() * (1 - LARGE)));
        int most = down.room() - Math.max(Pixels.of(LEAST_PICTURE), picture);
        return Math.max(Pixels.of(VIEWS), Math.min(most, height));
    }

    /** As wide as the fields are to be now, pixels. */
    private int fieldsWidth() {
        if (!right.isVisible()) {
            return 0;
        }
        return beside(fieldsWanted > 0 ? fieldsWanted : Pixels.of(FIELDS_AT_FIRST));
    }

    /** As much of a width as leaves the picture its room. */
    private int beside(int wanted) {
        int most = across.room() - down.component().getMinimumSize().width;
        return Math.max(right.getMinimumSize().width, Math.min(most, wanted));
    }

    /** For the next time; views that were made large are as before then. */
    void remember() {
        ViewSize left = size == ViewSize.LARGE ? before : size;
        geometry.rememberFlag("views.open", left != ViewSize.FOLDED);
        geometry.rememberFlag("fields.away", !right.isVisible());
        geometry.rememberPart("views", viewsWanted);
        geometry.rememberPart("forms", fieldsWanted);
    }
}

package thrumwright.editor.window.piece;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.text.Commands;

/**
 * The three parts of the window and the dividers between them: above the picture, below it the views, at the right the
 * fields. Dividers are moved by mouse or by command, and stay where they were left.
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
    private final JSplitPane down;
    private final JSplitPane across;
    /** How high the views were before they were made large; 0 if they never were. */
    private int before;

    private int fieldsBefore;

    /** @param picture the canvas with what belongs to it */
    Parts(Geometry geometry, JComponent picture, JTabbedPane views, JComponent right) {
        this.geometry = geometry;
        this.views = views;
        this.right = right;
        picture.setMinimumSize(Pixels.of(new Dimension(160, LEAST_PICTURE)));
        views.setMinimumSize(Pixels.of(new Dimension(160, VIEWS)));
        right.setMinimumSize(Pixels.of(new Dimension(FIELDS, 100)));
        views.setPreferredSize(Pixels.of(new Dimension(400, MOST_AT_FIRST)));
        right.setPreferredSize(Pixels.of(new Dimension(FIELDS_AT_FIRST, 400)));
        down = split("canvasAndViews", JSplitPane.VERTICAL_SPLIT, picture, views);
        down.setResizeWeight(1 - USUAL);
        across = split("canvasAndForms", JSplitPane.HORIZONTAL_SPLIT, down, right);
        once(down, () -> setViews(geometry.part("views", usual(), Pixels.of(60), mostForViews())));
        once(
                across,
                () -> setFields(geometry.part(
                        "forms", Pixels.of(FIELDS_AT_FIRST), Pixels.of(FIELDS), Math.max(0, across.getWidth() / 2))));
    }

    private static JSplitPane split(String name, int way, JComponent first, JComponent second) {
        JSplitPane split = new JSplitPane(way, first, second);
        split.setName(name);
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        return split;
    }

    /** As soon as there is a size to divide. */
    private static void once(JSplitPane split, Runnable divide) {
        split.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                split.removeComponentListener(this);
                divide.run();
            }
        });
    }

    JComponent component() {
        return across;
    }

    void addTo(Commands commands) {
        commands.addSwitch("views-large", this::toggleViews, this::viewsLarge);
        commands.add("divider-up", () -> setViews(viewsHeight() + Pixels.of(STEP)));
        commands.add("divider-down", () -> setViews(viewsHeight() - Pixels.of(STEP)));
        commands.add("divider-left", () -> setFields(fieldsWidth() + Pixels.of(STEP)), this::fieldsShown);
        commands.add("divider-right", () -> setFields(fieldsWidth() - Pixels.of(STEP)), this::fieldsShown);
        commands.addSwitch("fields-shown", this::toggleFields, this::fieldsShown);
        across.addPropertyChangeListener(JSplitPane.DIVIDER_LOCATION_PROPERTY, event -> commands.refresh());
        down.addPropertyChangeListener(JSplitPane.DIVIDER_LOCATION_PROPERTY, event -> commands.refresh());
        views.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2 && views.indexAtLocation(event.getX(), event.getY()) >= 0) {
                    commands.run("views-large");
                }
            }
        });
    }

    /** Gives the views most of the height, or what they had before. */
    private void toggleViews() {
        if (viewsLarge()) {
            setViews(before > 0 ? before : usual());
        } else {
            before = viewsHeight();
            setViews(large());
        }
    }

    /** Leaves all of the width to the picture, or brings the fields back. */
    private void toggleFields() {
        if (fieldsShown()) {
            fieldsBefore = fieldsWidth();
            right.setVisible(false);
            across.setDividerLocation(across.getWidth() - across.getDividerSize());
        } else {
            right.setVisible(true);
            setFields(fieldsBefore);
        }
    }

    private boolean fieldsShown() {
        return right.isVisible();
    }

    /** Made large by the command or by hand, which comes to the same. */
    private boolean viewsLarge() {
        return down.getHeight() > 0 && viewsHeight() >= large() - 2;
    }

    /** As the divider has it, whether or not it was laid out since. */
    private int viewsHeight() {
        return down.getHeight() - down.getDividerSize() - down.getDividerLocation();
    }

    private int fieldsWidth() {
        return across.getWidth() - across.getDividerSize() - across.getDividerLocation();
    }

    private int usual() {
        return Math.max(Pixels.of(VIEWS), Math.min(Pixels.of(MOST_AT_FIRST), (int) (down.getHeight() * USUAL)));
    }

    private int large() {
        return Math.max(Pixels.of(VIEWS), Math.min(mostForViews(), (int) (down.getHeight() * LARGE)));
    }

    private int mostForViews() {
        int room = down.getHeight() - down.getDividerSize();
        int picture = Math.min(Pixels.of(PICTURE), (int) (room * (1 - LARGE)));
        return room - Math.max(Pixels.of(LEAST_PICTURE), picture);
    }

    private void setViews(int height) {
        int kept = Math.max(Pixels.of(VIEWS), Math.min(mostForViews(), height));
        down.setDividerLocation(Math.max(0, down.getHeight() - down.getDividerSize() - kept));
    }

    private void setFields(int width) {
        int most = across.getWidth() - across.getDividerSize() - down.getMinimumSize().width;
        int kept = Math.max(right.getMinimumSize().width, Math.min(most, width));
        across.setDividerLocation(Math.max(0, across.getWidth() - across.getDividerSize() - kept));
    }

    /** For the next time; views that were made large are small again then. */
    void remember() {
        boolean back = viewsLarge() && before > 0;
        geometry.rememberPart("views", back ? before : viewsHeight());
        geometry.rememberPart("forms", fieldsShown() ? fieldsWidth() : fieldsBefore);
    }
}

package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPopupMenu;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.look.Theme;
import thrumwright.piece.Place;
import thrumwright.testing.SeeingGraphics;
import thrumwright.testing.SeeingGraphics.Seen;
import thrumwright.testing.WindowTest;

/**
 * Every text stands out from what is behind it by 4.5, every mark by 3 (WCAG 2.2, 1.4.3 and 1.4.11), measured where they
 * are painted, in every view, form and menu and in every theme.
 */
class ContrastIT {
    private static final double TEXT = 4.5;
    private static final double MARK = 3;

    /** Lines and shapes of the look itself by which a part of the window is known, and what lies beside them. */
    private static final List<List<String>> LOOK = List.of(
            List.of("Component.borderColor", "Panel.background"),
            List.of("Component.focusedBorderColor", "Panel.background"),
            List.of("Component.error.borderColor", "Panel.background"),
            List.of("Component.error.focusedBorderColor", "Panel.background"),
            List.of("Button.borderColor", "Panel.background"),
            List.of("CheckBox.icon.borderColor", "Panel.background"),
            List.of("ComboBox.buttonArrowColor", "ComboBox.background"),
            List.of("ScrollBar.thumb", "ScrollBar.track"),
            List.of("SplitPaneDivider.gripColor", "SplitPane.background"),
            List.of("TabbedPane.underlineColor", "TabbedPane.background"),
            List.of("List.selectionBackground", "List.background"));

    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;
    private final Set<String> found = new LinkedHashSet<>();
    private int texts;
    private int marks;

    @ParameterizedTest
    @EnumSource(Theme.class)
    void everythingStandsOut(Theme theme) {
        stage = Stage.open(window, Locale.UK, Stage.ofAllKinds());
        stage.theme(theme);
        stage.size(1366, 768);
        stage.eachView(state -> look(theme + ", " + state));
        stage.eachForm(state -> look(theme + ", " + state));
        stage.select(Place.TOP, "facing");
        look(theme + ", a block of the top");
        stage.run(() -> menus(theme, stage.editor().frame().getJMenuBar()));
        stage.run(() -> parts(theme));
        assertThat(texts).as("texts looked at").isGreaterThan(2000);
        assertThat(marks).as("marks looked at").isGreaterThan(300);
        assertThat(found).as(String.join("\n", found)).isEmpty();
    }

    private void look(String state) {
        stage.settle();
        stage.run(() -> look(state, stage.editor().frame().getRootPane()));
    }

    private void look(String state, Component whole) {
        List<Seen> all = SeeingGraphics.of(
                whole.getWidth(), whole.getHeight(), UIManager.getColor("Panel.background"), whole::paint);
        for (Seen seen : all) {
            if (seen.clip().createIntersection(seen.box()).isEmpty()
                    && !seen.clip().intersects(grown(seen))) {
                continue;
            }
            if (!seen.text().isEmpty()) {
                texts++;
                check(seen.contrast(), TEXT, state + ": “" + seen.text() + "” " + colours(seen) + at(whole, seen));
            } else if (isMark(seen)) {
                marks++;
                check(seen.contrast(), MARK, state + ": a mark by " + seen.painter() + " " + colours(seen));
            }
        }
    }

    /** What the window itself paints on one of its grounds; cloth and yarns have whatever colour they have. */
    private boolean isMark(Seen seen) {
        boolean ofYarn = seen.painter().equals(Swatch.class.getName())
                || seen.painter().equals("thrumwright.editor.canvas.cloth.Sketch");
        return seen.painter().startsWith("thrumwright.editor.")
                && !ofYarn
                && !seen.tint()
                && grounds().contains(seen.ground())
                && !grounds().contains(seen.colour());
    }

    private Set<Color> grounds() {
        Set<Color> grounds = new HashSet<>();
        for (String key :
                List.of("Panel.background", "List.background", "Table.background", "Thrumwright.selectedBackground")) {
            grounds.add(new Color(UIManager.getColor(key).getRGB()));
        }
        grounds.add(stage.editor().room().theme().palette().paper());
        return grounds;
    }

    /** A line may have no height. */
    private static java.awt.geom.Rectangle2D grown(Seen seen) {
        return new java.awt.geom.Rectangle2D.Double(
                seen.box().getX() - 0.5,
                seen.box().getY() - 0.5,
                seen.box().getWidth() + 1,
                seen.box().getHeight() + 1);
    }

    private static String at(Component whole, Seen seen) {
        if (!(whole instanceof Container container)) {
            return "";
        }
        Component there = container.findComponentAt(
                (int) seen.box().getCenterX(), (int) seen.box().getCenterY());
        return there == null ? "" : " in " + there.getClass().getSimpleName() + " " + there.getName();
    }

    private static String colours(Seen seen) {
        return hex(seen.colour()) + " on " + hex(seen.ground());
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }

    private void check(double contrast, double least, String what) {
        if (contrast < least - 0.005) {
            found.add(String.format(Locale.ROOT, "%s is %.2f", what, contrast));
        }
    }

    private void menus(Theme theme, JMenuBar bar) {
        for (int i = 0; i < bar.getMenuCount(); i++) {
            JMenu menu = bar.getMenu(i);
            JPopupMenu popup = menu.getPopupMenu();
            popup.setSize(popup.getPreferredSize());
            popup.doLayout();
            look(theme + ", menu " + menu.getText(), popup);
        }
    }

    private void parts(Theme theme) {
        for (List<String> pair : LOOK) {
            Color mark = UIManager.getColor(pair.get(0));
            Color ground = UIManager.getColor(pair.get(1));
            assertThat(mark).as(pair.get(0)).isNotNull();
            assertThat(ground).as(pair.get(1)).isNotNull();
            check(
                    SeeingGraphics.contrast(mark, ground),
                    MARK,
                    theme + ": " + pair.get(0) + " " + hex(mark) + " on " + hex(ground));
        }
    }

    /** Contrast of #767676 on white 4.5422; of #777777 4.4781 (WCAG 2 definition). */
    @Test
    void contrastIsMeasuredAsDefined() {
        assertThat(SeeingGraphics.contrast(new Color(0x767676), Color.WHITE)).isBetween(4.542, 4.5425);
        assertThat(SeeingGraphics.contrast(Color.WHITE, new Color(0x777777))).isBetween(4.478, 4.4785);
        List<Seen> seen = SeeingGraphics.of(100, 30, Color.WHITE, g -> {
            g.setColor(new Color(0, 0, 0, 128));
            g.drawString("half", 5, 20);
        });
        assertThat(seen).singleElement().satisfies(text -> {
            assertThat(text.colour()).isEqualTo(new Color(127, 127, 127));
            assertThat(text.tint()).isTrue();
            assertThat(text.ground()).isEqualTo(Color.WHITE);
        });
    }
}

package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.formdev.flatlaf.util.UIScale;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import javax.swing.JTabbedPane;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.drawing.Fonts;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Theme;
import thrumwright.testing.WindowTest;

/** Where the look draws all larger, type grows with it, and the window still has room for everything. */
class ScaleIT {
    private static final String SCALE = "flatlaf.uiScale";

    @RegisterExtension
    final WindowTest window = new WindowTest();

    /** The look keeps the last scale that it was asked for, so it is asked for the usual one. */
    @AfterEach
    void asBefore() {
        System.setProperty(SCALE, "1");
        float factor = WindowTest.onEventThread(() -> {
            Theme.LIGHT.apply(Fonts.load());
            System.clearProperty(SCALE);
            Theme.LIGHT.apply(Fonts.load());
            return UIScale.getUserScaleFactor();
        });
        assertThat(factor).as("left to the tests after it").isEqualTo(1f);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 1.5, 2})
    void typeIsAsMuchLargerAsAllElse(double scale) {
        System.setProperty(SCALE, String.valueOf(scale));
        Stage stage = Stage.open(window, Locale.UK, Stage.demo("saltmarsh-panel"));
        assertThat(UIScale.getUserScaleFactor()).isEqualTo((float) scale);
        for (Theme theme : Theme.values()) {
            stage.theme(theme);
            float factor = stage.ask(UIScale::getUserScaleFactor);
            float label = stage.ask(() -> UIManager.getFont("Label.font").getSize2D());
            float strong = stage.ask(() -> UIManager.getFont("semibold.font").getSize2D());
            assertThat(factor).as("%s", theme).isEqualTo((float) scale);
            assertThat((double) label).as("%s", theme).isCloseTo(14 * scale, within(0.01));
            assertThat((double) strong).as("%s", theme).isCloseTo(14 * scale, within(0.01));
        }
        int icon = stage.ask(() -> Icons.of("add").getIconWidth());
        assertThat((double) icon).isCloseTo(18 * scale, within(1.0));
        JTabbedPane tabs = stage.robot().finder().findByName(stage.editor().frame(), "views", JTabbedPane.class);
        assertThat((double) stage.ask(() -> tabs.getFont().getSize2D())).isCloseTo(14 * scale, within(0.01));
    }

    /** As small as a window gets. */
    @ParameterizedTest
    @ValueSource(doubles = {1.5, 2})
    void nothingIsCutOff(double scale) {
        System.setProperty(SCALE, String.valueOf(scale));
        Stage stage = Stage.open(window, Locale.UK, Stage.ofAllKinds());
        stage.size((int) (683 * scale), (int) (384 * scale));
        Set<String> found = new LinkedHashSet<>();
        stage.eachView(state -> look(stage, state, found));
        stage.eachForm(state -> look(stage, state, found));
        assertThat(found).as(String.join("\n", found)).isEmpty();
    }

    private static void look(Stage stage, String state, Set<String> found) {
        stage.settle();
        stage.run(() ->
                Unclipped.in(stage.editor().frame().getRootPane()).forEach(what -> found.add(state + ": " + what)));
    }
}

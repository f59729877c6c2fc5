package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Destiny;
import thrumwright.piece.Label;
import thrumwright.testing.WindowTest;

/** What a piece is made for brings its own fields, and nothing of it is there before somebody says it. */
class MadeForIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private Stage stage;

    /** Those of “made for” and what belongs to it. */
    private Set<String> fields() {
        stage.settle();
        JComponent form = stage.form();
        return stage.ask(() -> Stage.all(
                        form, JComponent.class, field -> named(field).startsWith("field.for"))
                .stream()
                .map(MadeForIT::named)
                .filter(name -> !name.endsWith(".reason"))
                .collect(Collectors.toSet()));
    }

    private static String named(JComponent field) {
        return String.valueOf(field.getName());
    }

    private <C extends JComponent> C field(String name, Class<C> kind) {
        JComponent form = stage.form();
        return stage.ask(
                () -> Stage.all(form, kind, one -> named(one).equals(name)).get(0));
    }

    private void choose(int use) {
        stage.run(() -> field("field.for", JComboBox.class).setSelectedIndex(use));
    }

    private void click(String name) {
        AbstractButton box = field(name, AbstractButton.class);
        stage.run(() -> box.doClick(0));
    }

    @Test
    void fieldsComeAsTheyAreAskedFor() {
        stage = Stage.open(window, Locale.UK, Beginnings.empty(UnitSystem.METRIC));
        stage.frame().tabbedPane("forms").selectTab("Piece");
        assertThat(fields()).containsExactly("field.for");

        choose(1);
        assertThat(fields())
                .containsExactlyInAnyOrder("field.for", "field.for.lined", "field.for.cord", "field.for.label");
        click("field.for.lined");
        click("field.for.label");
        assertThat(fields()).contains("field.for.maker", "field.for.year").doesNotContain("field.for.border");
        Destiny hung = stage.session().piece().destiny();
        assertThat(hung.lined()).isTrue();
        assertThat(hung.label()).isEqualTo(Optional.of(new Label("", "")));

        choose(2);
        click("field.for.cord");
        assertThat(fields())
                .contains("field.for.border", "field.for.cord-along", "field.for.cord-thick", "field.for.cord-plaited")
                .doesNotContain("field.for.lined");
        assertThat(stage.session()
                        .piece()
                        .destiny()
                        .cord()
                        .orElseThrow()
                        .thick()
                        .text())
                .isEqualTo("4 mm");

        choose(0);
        assertThat(fields()).containsExactly("field.for");
    }
}

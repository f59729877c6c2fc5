package thrumwright.editor.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandTextsTest {
    @ParameterizedTest
    @ValueSource(strings = {"ctrl", "meta"})
    void noTwoCommandsOfAWindowAnswerToOneKey(String menuKey) {
        Map<String, String> owners = new HashMap<>();
        List<String> conflicts = new ArrayList<>();
        for (CommandText command : new CommandTexts(Locale.UK, menuKey).all()) {
            for (KeyStroke key : command.keys()) {
                String other = owners.put(key + window(command), command.id());
                if (other != null) {
                    conflicts.add(key + ": " + other + ", " + command.id());
                }
            }
        }

        assertThat(owners).hasSizeGreaterThan(20);
        assertThat(conflicts).isEmpty();
    }

    /** What systems keep for themselves, so that a program never gets it, or does something else in every field; from memory. */
    static Stream<Arguments> taken() {
        return Stream.of(
                Arguments.of(
                        "meta",
                        "meta H, meta alt H, meta M, meta SPACE, meta TAB, meta COMMA, meta BACK_QUOTE, meta shift 3, meta shift 4,"
                                + " meta shift 5, meta shift Q, meta alt ESCAPE, meta alt D, ctrl UP, ctrl DOWN, ctrl LEFT,"
                                + " ctrl RIGHT, ctrl SPACE, alt shift UP, alt shift DOWN, alt shift LEFT, alt shift RIGHT, F11"),
                Arguments.of(
                        "ctrl",
                        "alt F4, alt TAB, alt SPACE, alt ESCAPE, ctrl ESCAPE, ctrl shift ESCAPE, ctrl alt DELETE, ctrl alt UP,"
                                + " ctrl alt DOWN, ctrl alt LEFT, ctrl alt RIGHT, ctrl alt L, ctrl alt T, ctrl SPACE,"
                                + " ctrl shift U, alt F1, alt F2, alt F7, alt F8, alt F10, F11, PRINTSCREEN"));
    }

    @ParameterizedTest
    @MethodSource("taken")
    void noCommandNeedsAKeyThatItsSystemTakes(String menuKey, String taken) {
        Set<KeyStroke> gone =
                Stream.of(taken.split(",\\s*")).map(KeyStroke::getKeyStroke).collect(Collectors.toSet());
        List<String> clashes = new ArrayList<>();
        for (CommandText command : new CommandTexts(Locale.UK, menuKey).all()) {
            command.keys().stream().filter(gone::contains).forEach(key -> clashes.add(command.id() + ": " + key));
        }

        assertThat(gone).doesNotContainNull().hasSizeGreaterThan(15);
        assertThat(clashes).isEmpty();
    }

    private static String window(CommandText command) {
        return switch (command.where()) {
            case SHEET -> " beside the sheet";
            case CLASS -> " beside the class";
            case LOOM -> " at the loom";
            default -> " beside the piece";
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"ctrl", "meta"})
    void everyCommandSaysWhatItDoesAndEveryIconIsThere(String menuKey) {
        for (CommandText command : new CommandTexts(Locale.UK, menuKey).all()) {
            assertThat(command.text()).isNotBlank();
            assertThat(command.tip()).as(command.id()).isNotBlank().isNotEqualTo(command.text());
            command.icon()
                    .ifPresent(icon -> assertThat(getClass().getResource("/thrumwright/editor/icons/" + icon + ".svg"))
                            .as(icon)
                            .isNotNull());
        }
    }
}

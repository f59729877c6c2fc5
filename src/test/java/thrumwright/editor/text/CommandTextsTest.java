package thrumwright.editor.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.KeyStroke;
import org.junit.jupiter.params.ParameterizedTest;
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

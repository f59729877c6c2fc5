package thrumwright.editor.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("kept").resolve("settings.properties");
    }

    private Settings settings() {
        return new Settings(Optional.of(file()));
    }

    @Test
    void theFileUsedLastComesFirstAndOneThatIsGoneIsForgotten() {
        Path reed = folder.resolve("reed.json");
        Path tide = folder.resolve("tide.json");
        Settings settings = settings();
        settings.used(reed);
        settings.used(tide);
        settings.used(reed);
        assertThat(settings().recent()).containsExactly(reed, tide);

        settings.forget(reed);

        assertThat(settings().recent()).containsExactly(tide);
    }

    @Test
    void onlySoManyFilesAreRemembered() {
        Settings settings = settings();
        for (int i = 0; i < 20; i++) {
            settings.used(folder.resolve("piece-" + i + ".json"));
        }
        assertThat(settings().recent()).hasSize(8).first().isEqualTo(folder.resolve("piece-19.json"));
    }

    @Test
    void whatSomebodySpoiledDoesNoHarm() throws Exception {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), "recent.0=\\u0000marsh\nrecent.1=tide.json\nwindow.views=many\nwindow.forms=99999\n");

        Settings settings = settings();

        assertThat(settings.recent()).containsExactly(Path.of("tide.json"));
        Geometry geometry = new Geometry(settings);
        assertThat(geometry.part("views")).isZero();
        assertThat(geometry.isSet("views")).isFalse();
    }

    @Test
    void partsOfTheWindowKeepTheirSize() {
        new Geometry(settings()).rememberPart("forms", 407);
        new Geometry(settings()).rememberPart("views", 0);

        Geometry later = new Geometry(settings());
        assertThat(later.part("forms")).isEqualTo(407);
        assertThat(later.part("views")).isZero();
    }

    @Test
    void everySystemHasItsPlaceForThem() {
        Path home = Path.of("home");
        assertThat(Settings.file("Linux", Map.of("XDG_CONFIG_HOME", "conf"), home))
                .isEqualTo(Path.of("conf", "thrumwright", "settings.properties"));
        assertThat(Settings.file("Mac OS X", Map.of(), home))
                .isEqualTo(home.resolve(Path.of("Library", "Preferences", "thrumwright", "settings.properties")));
        assertThat(Settings.file("Windows 11", Map.of("APPDATA", "roam"), home))
                .isEqualTo(Path.of("roam", "thrumwright", "settings.properties"));
    }
}

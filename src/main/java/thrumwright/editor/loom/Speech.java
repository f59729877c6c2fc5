package thrumwright.editor.loom;

import java.util.List;
import java.util.Optional;
import thrumwright.editor.settings.Settings;

/** Says aloud what is shown, if the weaver wants that and the system has a voice. Nothing depends on it. */
final class Speech {
    private static final String KEY = "loom.aloud";

    private final Settings settings;
    private final Optional<Voice> voice;
    private List<String> said = List.of();

    Speech(Settings settings, Optional<Voice> voice) {
        this.settings = settings;
        this.voice = voice;
    }

    boolean possible() {
        return voice.isPresent();
    }

    boolean wanted() {
        return possible() && settings.get(KEY).map(Boolean::valueOf).orElse(false);
    }

    void choose(boolean aloud) {
        settings.put(KEY, String.valueOf(aloud));
        said = List.of();
        if (!aloud) {
            stop();
        }
    }

    /** Each text once, when it comes; what was being said before it breaks off. */
    void say(List<String> texts) {
        if (wanted() && !texts.equals(said)) {
            said = texts;
            voice.orElseThrow().say(String.join(". ", texts).replaceAll("[→←]", ""));
        }
    }

    void stop() {
        voice.ifPresent(Voice::stop);
    }
}

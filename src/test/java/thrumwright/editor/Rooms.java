package thrumwright.editor;

import java.util.Optional;
import thrumwright.editor.library.Library;
import thrumwright.editor.settings.Settings;
import thrumwright.store.Structures;

/** Weaving rooms for tests: with the built-in structures only, whatever lies in the folders of whoever runs them. */
final class Rooms {
    /** Read once; nothing in it changes. */
    static final Library LIBRARY = Library.fixed(Structures.builtIn().all());

    private Rooms() {}

    /** A room that remembers nothing. */
    static Workroom forgetful() {
        return with(new Settings(Optional.empty()));
    }

    static Workroom with(Settings settings) {
        return new Workroom(settings, LIBRARY);
    }
}

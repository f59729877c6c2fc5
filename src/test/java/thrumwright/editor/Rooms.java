package thrumwright.editor;

import java.util.List;
import java.util.Optional;
import thrumwright.editor.library.Library;
import thrumwright.piece.Structure;
import thrumwright.store.Structures;

/** Weaving rooms for tests: with the built-in structures only, whatever lies in the folders of whoever runs them. */
final class Rooms {
    private static final List<Structure> STRUCTURES = Structures.builtIn().all();

    private Rooms() {}

    /** A room that remembers nothing. */
    static Workroom forgetful() {
        return with(new Settings(Optional.empty()));
    }

    static Workroom with(Settings settings) {
        return new Workroom(settings, Library.fixed(STRUCTURES));
    }
}

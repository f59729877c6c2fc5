package thrumwright.editor;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window. */
public final class EditorApp {
    private EditorApp() {}

    public static void open(Optional<Path> file) {
        throw new UnsupportedOperationException("the window is not built yet");
    }
}

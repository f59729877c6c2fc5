package thrumwright.editor.look;

import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file that somebody is to choose.
 *
 * @param name by which its dialog is found
 * @param title of the dialog
 * @param folder where to begin looking; empty: where the system begins
 * @param kinds what may be chosen; where there is only one, other files may be chosen all the same
 * @param usual one of them
 */
public record FileAsked(String name, String title, Optional<Path> folder, List<Kind> kinds, Kind usual) {
    /**
     * Files that are alike.
     *
     * @param name for whom it may concern, such as “PDF (*.pdf)”
     * @param endings without their points
     */
    public record Kind(String name, List<String> endings) {
        public static Kind of(String name, String... endings) {
            return new Kind(name, List.of(endings));
        }

        String[] inArray() {
            return endings.toArray(String[]::new);
        }
    }

    /** What was chosen; of which kind its name may say otherwise. */
    public record Chosen(Path path, Kind kind) {}

    /** A file of one kind. */
    public static FileAsked of(String name, String title, Optional<Path> folder, Kind kind) {
        return new FileAsked(name, title, folder, List.of(kind), kind);
    }

    /** Asks in a dialog, which may be asked again and then is as it was left. */
    public interface Dialog {
        /** One that is there; empty if the weaver gave it up. */
        Optional<Chosen> open(Component over);

        /**
         * One that may be new; empty if the weaver gave it up.
         *
         * @param suggestion a name, without its ending
         */
        Optional<Chosen> save(Component over, String suggestion);
    }

    /** The system's own dialog where there is one, else ours. */
    public Dialog dialog() {
        return SystemFiles.offered() ? new SystemFiles(this) : new OwnFiles(this);
    }
}

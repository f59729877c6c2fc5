package thrumwright.editor.window.piece;

import java.util.Optional;
import thrumwright.editor.files.Beginning;
import thrumwright.editor.files.Questions.Welcome;
import thrumwright.editor.settings.Workplace;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

/** Somebody who has no piece yet is asked what to begin with. */
record FirstStart(FileWork files, Workplace place) {
    void ask() {
        if (files.untouched()) {
            files.questions().welcome().ifPresent(this::go);
        }
    }

    private void go(Welcome step) {
        switch (step) {
            case FIRST_PANEL ->
                files.begin(new Beginning(place.library().byId(Beginnings.FIRST_PANEL), UnitSystem.METRIC));
            case OWN -> files.begin();
            case OPEN -> files.questions().fileToOpen().ifPresent(files::open);
            case DEMO -> files.take(demo(), Optional.empty(), Optional.empty());
        }
    }

    private static PieceFile demo() {
        try {
            return PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0)));
        } catch (FileProblem damaged) {
            throw new IllegalStateException("the demo piece is damaged", damaged);
        }
    }
}

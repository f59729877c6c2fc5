package thrumwright.editor.window.piece;

import java.util.Map;
import java.util.Optional;
import javax.swing.Action;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;

/** Going back and forth in the history by commands that say what they would undo or do again. */
record HistoryWork(Session session, Commands commands, Texts texts) {
    void add() {
        commands.add("undo", session::undo, () -> session.history().undoName().isPresent());
        commands.add("redo", session::redo, () -> session.history().redoName().isPresent());
    }

    /** What they say now. */
    void name() {
        name("undo", session.history().undoName().map(what -> texts.say("undo.of", Map.of("what", what))));
        name("redo", session.history().redoName().map(what -> texts.say("redo.of", Map.of("what", what))));
    }

    private void name(String id, Optional<String> text) {
        commands.get(id).putValue(Action.SHORT_DESCRIPTION, text.orElse(texts.say(id + ".nothing")));
    }
}

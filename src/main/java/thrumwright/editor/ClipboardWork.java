package thrumwright.editor;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Commands;
import thrumwright.piece.End;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.store.FileProblem;
import thrumwright.store.StructureFile;

/** Cuts, copies and pastes blocks. On the clipboard they are a structure's file, which can be read and kept as well. */
final class ClipboardWork {
    private final EditorWindow window;
    private final Session session;
    private final Edits edits;

    ClipboardWork(EditorWindow window, Edits edits) {
        this.window = window;
        this.session = window.session();
        this.edits = edits;
    }

    void addTo(Commands commands) {
        commands.add("copy", this::copy, this::any);
        commands.add("cut", this::cut, this::any);
        commands.add("paste", this::paste);
    }

    private boolean any() {
        return !session.selection().isEmpty();
    }

    private static Clipboard clipboard() {
        return Toolkit.getDefaultToolkit().getSystemClipboard();
    }

    private void copy() {
        List<Block> blocks = session.selection().blocksIn(session.piece());
        String name = window.room().texts().say("clipboard.name");
        String text = StructureFile.of(new Structure(
                        "copied-blocks", name, name, "", Optional.empty(), List.of(), name, new End(blocks)))
                .text();
        try {
            clipboard().setContents(new StringSelection(text), null);
        } catch (IllegalStateException e) {
            window.problem(window.room().texts().say("clipboard.busy"));
        }
    }

    private void cut() {
        copy();
        session.edit(edits.delete(session.piece(), session.selection()));
    }

    private void paste() {
        try {
            String text = (String) clipboard().getData(DataFlavor.stringFlavor);
            paste(StructureFile.read(text).structure().end().blocks());
        } catch (UnsupportedFlavorException | IOException | FileProblem e) {
            window.problem(window.room().texts().say("clipboard.no-blocks"));
        } catch (IllegalStateException e) {
            window.problem(window.room().texts().say("clipboard.busy"));
        }
    }

    private void paste(List<Block> blocks) {
        Selection selection = session.selection();
        boolean fixed = selection.place() == Place.TOP && session.piece().topFollows();
        Place place = fixed ? Place.START : selection.place();
        int index = selection
                .lead()
                .filter(id -> !fixed)
                .map(id -> session.piece().end(place).indexOf(id) + 1)
                .orElse(session.piece().end(place).blocks().size());
        session.edit(edits.paste(session.piece(), place, index, blocks, "edit.paste"));
    }
}

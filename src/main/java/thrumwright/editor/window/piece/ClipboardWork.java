package thrumwright.editor.window.piece;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.piece.End;
import thrumwright.piece.Structure;
import thrumwright.store.FileProblem;
import thrumwright.store.StructureFile;

/** Cuts, copies and pastes blocks. On the clipboard they are a structure's file, which can be read and kept as well. */
final class ClipboardWork {
    private final EditorWindow window;
    private final Session session;
    private final Edits edits;
    private final Texts texts;

    ClipboardWork(EditorWindow window, Edits edits) {
        this.window = window;
        this.session = window.session();
        this.edits = edits;
        this.texts = window.room().texts();
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

    /** @return whether they are on the clipboard now */
    private boolean copy() {
        List<Block> blocks = session.selection().blocksIn(session.piece());
        String name = texts.say("clipboard.name");
        String text = StructureFile.of(new Structure(
                        "copied-blocks", name, name, "", Optional.empty(), List.of(), name, new End(blocks)))
                .text();
        try {
            clipboard().setContents(new StringSelection(text), null);
            return true;
        } catch (IllegalStateException e) {
            window.problem(texts.say("clipboard.busy"));
            return false;
        }
    }

    private void cut() {
        if (copy()) {
            window.edit(edits.delete(session.piece(), session.selection()));
        }
    }

    private void paste() {
        try {
            String text = (String) clipboard().getData(DataFlavor.stringFlavor);
            if (looksLikeJson(text)) {
                paste(StructureFile.read(text).structure().end().blocks());
            } else {
                window.problem(texts.say("clipboard.no-blocks"));
            }
        } catch (UnsupportedFlavorException | IOException e) {
            window.problem(texts.say("clipboard.no-blocks"));
        } catch (FileProblem e) {
            window.problem(texts.say("clipboard.unreadable", Map.of("why", e.getMessage())));
        } catch (IllegalStateException e) {
            window.problem(texts.say("clipboard.busy"));
        }
    }

    /** Anything else is simply no blocks, whatever it is; of what may be meant as blocks it is said what is wrong. */
    private static boolean looksLikeJson(String text) {
        String begins = text.stripLeading();
        return begins.startsWith("{") || begins.startsWith("[") || StructureFile.isMeant(text);
    }

    private void paste(List<Block> blocks) {
        long strange = blocks.stream()
                .filter(block -> Edits.lacksYarn(block, session.piece()))
                .count();
        Slot slot = Slot.above(session.piece(), session.selection());
        boolean done = window.edit(edits.paste(session.piece(), slot, blocks, "edit.paste"));
        if (done && strange > 0) {
            window.messages().say(texts.say("clipboard.other-yarns", Map.of("count", strange)));
        }
    }
}

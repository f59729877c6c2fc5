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
import java.util.function.Predicate;
import thrumwright.block.Block;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.edit.Slot;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Messages;
import thrumwright.editor.text.Texts;
import thrumwright.piece.End;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.store.FileProblem;
import thrumwright.store.FileSort;
import thrumwright.store.StructureFile;

/**
 * Cuts, copies and pastes blocks. On the clipboard they are a structure's file, which can be read and kept as well.
 *
 * @param doing does an edit, or says why it refuses; whether it was done
 */
record ClipboardWork(Session session, Edits edits, Texts texts, Messages messages, Predicate<Edit> doing) {
    void addTo(Commands commands) {
        commands.add("copy", this::copy, this::any);
        commands.add("cut", this::cut, this::any);
        commands.add("paste", this::paste);
        commands.add("duplicate", this::duplicate, this::any);
    }

    private boolean any() {
        return !session.selection().isEmpty();
    }

    private static Clipboard clipboard() {
        return Toolkit.getDefaultToolkit().getSystemClipboard();
    }

    private String copied() {
        List<Block> blocks = session.selection().blocksIn(session.piece());
        String name = texts.say("clipboard.name");
        return StructureFile.of(new Structure(
                        "copied-blocks", name, name, "", Optional.empty(), false, List.of(), name, new End(blocks)))
                .text();
    }

    /** @return whether they are on the clipboard now */
    private boolean copy() {
        try {
            clipboard().setContents(new StringSelection(copied()), null);
            return true;
        } catch (IllegalStateException e) {
            messages.problem(texts.say("clipboard.busy"));
            return false;
        }
    }

    private void cut() {
        if (copy()) {
            doing.test(edits.delete(session.piece(), session.selection()));
        }
    }

    private void paste() {
        try {
            String text = (String) clipboard().getData(DataFlavor.stringFlavor);
            if (looksLikeJson(text)) {
                paste(StructureFile.read(text).structure().end().blocks());
            } else {
                messages.problem(texts.say("clipboard.no-blocks"));
            }
        } catch (UnsupportedFlavorException | IOException e) {
            messages.problem(texts.say("clipboard.no-blocks"));
        } catch (FileProblem e) {
            messages.problem(texts.say("clipboard.unreadable", Map.of("why", e.getMessage())));
        } catch (IllegalStateException e) {
            messages.problem(texts.say("clipboard.busy"));
        }
    }

    /** Anything else is simply no blocks, whatever it is; of what may be meant as blocks it is said what is wrong. */
    private static boolean looksLikeJson(String text) {
        String begins = text.stripLeading();
        return begins.startsWith("{") || begins.startsWith("[") || FileSort.of(text) == FileSort.STRUCTURE;
    }

    private void paste(List<Block> blocks) {
        long strange = blocks.stream()
                .filter(block -> session.piece().lacksYarn(block))
                .count();
        if (put(blocks, "edit.paste") && strange > 0) {
            messages.say(texts.say("clipboard.other-yarns", Map.of("count", strange)));
        }
    }

    private void duplicate() {
        put(session.selection().blocksIn(session.piece()), "edit.duplicate");
    }

    /** Puts blocks in above the selected ones; of a top that follows the start it is said where they went. */
    private boolean put(List<Block> blocks, String key) {
        Slot slot = Slot.above(session.piece(), session.selection());
        boolean repeated = slot.place() == Place.TOP && session.piece().topFollows();
        boolean done = doing.test(edits.paste(session.piece(), slot, blocks, key));
        if (done && repeated) {
            messages.say(texts.say("clipboard.into-start"));
        }
        return done;
    }
}

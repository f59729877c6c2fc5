package thrumwright.store.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Map;
import thrumwright.measure.Phrase;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** The journal of one open document: its latest state, whole and forced to disk, while it isn't saved. For one thread at a time. */
public final class Journal implements AutoCloseable {
    private final Journals journals;
    private final String id;
    private final Hold hold;

    Journal(Journals journals, String id, Hold hold) {
        this.journals = journals;
        this.id = id;
        this.hold = hold;
    }

    /**
     * Keeps the document as it is now in place of what was kept before.
     *
     * @throws FileProblem if that can't be done; what was kept before is still there
     */
    public void keep(Unsaved unsaved) throws FileProblem {
        SafeFile.write(journals.file(id), unsaved.journal());
    }

    /**
     * Everything is saved: there is nothing to come back for.
     *
     * @throws FileProblem if what was kept can't be taken away
     */
    public void clear() throws FileProblem {
        try {
            Files.deleteIfExists(journals.file(id));
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("file.not-removed", Map.of("file", journals.file(id))), e);
        }
    }

    /** Lets go as when the program ends unasked: what was kept is left. */
    void abandon() throws IOException {
        hold.close();
        journals.ended(id);
    }

    /** The document is closed, saved or given up. */
    @Override
    public void close() throws FileProblem {
        try {
            hold.close();
        } catch (IOException e) {
            throw SafeFile.problem(new Phrase("journal.not-closed", Map.of("file", journals.file(id))), e);
        } finally {
            journals.forget(id);
            journals.ended(id);
        }
    }
}

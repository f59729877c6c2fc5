package thrumwright.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import thrumwright.store.FileProblem;
import thrumwright.store.SafeFile;

/** Makes a sheet and writes it beside the window's work; tells when it is done or why it isn't. */
final class SheetExport extends SwingWorker<Path, Void> {
    /** Makes the bytes of a file. */
    interface Maker {
        byte[] make() throws IOException;
    }

    private final Maker maker;
    private final Path file;
    private final Consumer<Path> done;
    private final Consumer<String> trouble;

    SheetExport(Maker maker, Path file, Consumer<Path> done, Consumer<String> trouble) {
        this.maker = maker;
        this.file = file;
        this.done = done;
        this.trouble = trouble;
    }

    @Override
    protected Path doInBackground() throws IOException, FileProblem {
        SafeFile.write(file, maker.make());
        return file;
    }

    @Override
    protected void done() {
        try {
            done.accept(get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            trouble.accept(e.getCause().getMessage());
        }
    }
}

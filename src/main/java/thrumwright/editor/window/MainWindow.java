package thrumwright.editor.window;

import java.awt.Rectangle;
import java.nio.file.Path;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Questions;
import thrumwright.editor.settings.Workplace;
import thrumwright.output.SheetLook;

/** The window of a piece, as the windows beside it know it. */
public interface MainWindow {
    Session session();

    Workplace room();

    /** Who is asked about files. */
    Questions questions();

    /** Where the window lies on the screen, pixels. */
    Rectangle bounds();

    /** Takes over whatever is being typed anywhere in the window. */
    void takeOver();

    /** Opens a file of any sort. */
    void open(Path file);

    /** The piece's title as the name of a file, without an ending. */
    String stem();

    /** How the step sheet is set up, or was the last time. */
    SheetLook sheetLook();
}

package thrumwright.editor;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.plan.Words;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

/** Opens the window. */
public final class EditorApp {
    private EditorApp() {}

    /** Opens a piece, or the demo piece if none is given. Returns at once; the window goes on by itself. */
    public static void open(Optional<Path> file) {
        SwingUtilities.invokeLater(() -> show(file));
    }

    private static void show(Optional<Path> file) {
        Fonts fonts = Fonts.load();
        Look look = Look.LIGHT;
        look.use(fonts);
        Phrases phrases = texts();
        Documents documents = new Documents();
        try {
            Piece piece = file.isPresent() ? documents.open(file.get()) : demo();
            window(piece, documents, fonts, look).setVisible(true);
        } catch (FileProblem problem) {
            JOptionPane.showMessageDialog(
                    null, problem.getMessage(), phrases.say("app.name"), JOptionPane.WARNING_MESSAGE);
        }
    }

    static Phrases texts() {
        return Phrases.of("thrumwright.editor.texts", Locale.UK);
    }

    static Piece demo() throws FileProblem {
        return PieceFile.read(BuiltIn.DEMO.text(BuiltIn.DEMO.names().get(0))).piece();
    }

    /** A window that isn't shown yet. */
    static JFrame window(Piece piece, Documents documents, Fonts fonts, Look look) {
        EditorWindow window = new EditorWindow(piece, documents, fonts, look, texts(), new Words(Locale.UK));
        window.frame().setLocationRelativeTo(null);
        return window.frame();
    }
}

package thrumwright.editor;

import java.awt.Desktop;
import java.awt.Image;
import java.awt.Taskbar;
import java.awt.desktop.QuitResponse;
import java.io.File;
import java.util.List;
import thrumwright.editor.look.Icons;
import thrumwright.editor.window.piece.EditorWindow;

/**
 * What a system asks of its programs outside their windows: to say what they are, to be set as somebody likes, to quit, to open a file that was
 * double-clicked. Where a system has its own menu for that, as macOS has, it asks here; elsewhere nothing comes.
 */
record SystemManners(Workroom room) {
    /** What must be said before there is any window: the menus belong at the top of the screen where that is usual. */
    static void before() {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        System.setProperty("apple.awt.application.name", "Thrumwright");
        System.setProperty("apple.awt.application.appearance", "system");
    }

    /** Answers from now on, once there is a window; other systems than macOS ask nothing, and some can't even be asked. */
    void install() {
        if (System.getProperty("os.name").startsWith("Mac")) {
            install(Desktop.getDesktop());
            List<Image> sizes = Icons.ofProgram();
            Taskbar.getTaskbar().setIconImage(sizes.get(sizes.size() - 1));
        }
    }

    private void install(Desktop desktop) {
        if (desktop.isSupported(Desktop.Action.APP_ABOUT)) {
            desktop.setAboutHandler(event -> about());
        }
        if (desktop.isSupported(Desktop.Action.APP_PREFERENCES)) {
            desktop.setPreferencesHandler(event -> preferences());
        }
        if (desktop.isSupported(Desktop.Action.APP_QUIT_HANDLER)) {
            desktop.setQuitHandler((event, response) -> quit(response));
        }
        if (desktop.isSupported(Desktop.Action.APP_OPEN_FILE)) {
            desktop.setOpenFileHandler(event -> open(event.getFiles()));
        }
    }

    void about() {
        room.windows().stream().findFirst().ifPresent(EditorWindow::about);
    }

    void preferences() {
        room.windows().stream().findFirst().ifPresent(EditorWindow::settings);
    }

    /** Whoever wants to stay with what isn't saved stays, and the system is told. */
    void quit(QuitResponse response) {
        room.closeAll();
        if (room.count() == 0) {
            response.performQuit();
        } else {
            response.cancelQuit();
        }
    }

    /** In the window that was opened last, which opens another if there is something in it. */
    void open(List<File> files) {
        List<EditorWindow> windows = room.windows();
        files.forEach(file -> windows.get(windows.size() - 1).open(file.toPath()));
    }
}

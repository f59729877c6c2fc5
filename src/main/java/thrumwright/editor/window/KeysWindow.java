package thrumwright.editor.window;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.KeyStroke;
import thrumwright.editor.look.Icons;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.KeyLine;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.KeysView;

/** The list of all keys in a window of its own, so that it can lie beside the work. */
public final class KeysWindow {
    private static final Dimension USUAL = new Dimension(900, 620);

    private final Workplace room;
    private final JFrame frame = new JFrame();
    private final KeysView view;

    /** @param already how many other windows there are */
    public KeysWindow(Workplace room, List<KeyLine> lines, int already) {
        this.room = room;
        Texts texts = room.texts();
        this.view = new KeysView(texts, lines);
        frame.setName("keysWindow");
        frame.setIconImages(Icons.ofProgram());
        frame.setTitle(texts.say("keys.title"));
        frame.add(view.component());
        for (String key : new String[] {"ESCAPE", Commands.menuKey() + " K", Commands.menuKey() + " W"}) {
            frame.getRootPane()
                    .registerKeyboardAction(
                            event -> frame.setVisible(false),
                            KeyStroke.getKeyStroke(key),
                            JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        }
        Geometry.least(frame, 480, 300);
        geometry().restore(frame, already);
    }

    private Geometry geometry() {
        return new Geometry(room.settings(), "keys.window", USUAL);
    }

    public JFrame frame() {
        return frame;
    }

    public void show() {
        frame.setVisible(true);
        frame.toFront();
        view.search().requestFocusInWindow();
    }

    public void dispose() {
        if (frame.isDisplayable()) {
            geometry().remember(frame);
        }
        frame.dispose();
    }
}

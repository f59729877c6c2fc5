package thrumwright.editor.window;

import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.event.HyperlinkEvent;
import thrumwright.editor.help.HelpPage;
import thrumwright.editor.help.HelpPane;
import thrumwright.editor.help.HelpTopic;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;

/** The docs in a window beside the work: all pages at the left, the one that is read at the right. */
public final class HelpWindow {
    private static final Dimension USUAL = new Dimension(980, 720);
    private static final int LIST = 240;

    private final JFrame frame = new JFrame();
    private final JList<HelpEntry> list;
    private final HelpPane pane = new HelpPane();
    private final Quiet quiet = new Quiet();

    /** A page in the list, by its title. */
    private record HelpEntry(HelpPage page, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    public HelpWindow(Workplace room) {
        frame.setName("helpWindow");
        frame.setIconImages(Icons.ofProgram());
        // a dialog that waits for an answer lets it be read meanwhile
        frame.setModalExclusionType(Dialog.ModalExclusionType.APPLICATION_EXCLUDE);
        frame.setTitle(room.texts().say("help.title"));
        list = new JList<>(HelpPage.all().stream()
                .map(page -> new HelpEntry(page, page.title()))
                .toArray(HelpEntry[]::new));
        list.setName("helpPages");
        list.getAccessibleContext().setAccessibleName(room.texts().say("help.pages"));
        list.addListSelectionListener(event -> chosen());
        pane.addHyperlinkListener(this::followed);
        JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, new JScrollPane(list), new JScrollPane(pane));
        whole.setDividerLocation(Pixels.of(LIST));
        frame.add(whole);
        for (String key : List.of("ESCAPE", "F1", Commands.menuKey() + " W")) {
            frame.getRootPane()
                    .registerKeyboardAction(
                            event -> frame.setVisible(false),
                            KeyStroke.getKeyStroke(key),
                            JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        }
        Geometry.least(frame, 480, 300);
        new Geometry(room.settings(), "help.window", USUAL).restore(frame, 1);
    }

    public JFrame frame() {
        return frame;
    }

    private void chosen() {
        if (!quiet.now() && list.getSelectedValue() != null) {
            pane.show(new HelpTopic(list.getSelectedValue().page(), ""));
        }
    }

    private void followed(HyperlinkEvent event) {
        if (event.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
            pane.topic().linked(event.getDescription()).ifPresent(this::open);
        }
    }

    private void open(HelpTopic topic) {
        quiet.during(() -> {
            for (int i = 0; i < list.getModel().getSize(); i++) {
                if (list.getModel().getElementAt(i).page().equals(topic.page())) {
                    list.setSelectedIndex(i);
                    list.ensureIndexIsVisible(i);
                }
            }
        });
        pane.show(topic);
    }

    public void show(HelpTopic topic) {
        frame.setVisible(true);
        frame.toFront();
        pane.requestFocusInWindow();
        // once it has its width, by which its lines break
        EventQueue.invokeLater(() -> open(topic));
    }

    public void dispose() {
        frame.dispose();
    }
}

package thrumwright.editor.help;

import java.awt.Color;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JEditorPane;
import javax.swing.UIManager;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Theme;

/** Shows a page to be read; what it shows travels along with the program, and nothing on it is run or fetched. */
public final class HelpPane extends JEditorPane {
    private static final long serialVersionUID = 1L;

    /** No picture is wider than is good to read beside. */
    private static final int WIDEST = 620;

    private static final int MARGIN = 16;

    private transient HelpTopic topic = HelpTopic.CONTENTS;

    public HelpPane() {
        Theme.nameFonts();
        setName("helpPage");
        setEditable(false);
        setEditorKit(new HTMLEditorKit());
        putClientProperty(HONOR_DISPLAY_PROPERTIES, Boolean.TRUE);
    }

    public HelpTopic topic() {
        return topic;
    }

    /** Shows a page from a place on it. */
    public void show(HelpTopic other) {
        if (!other.page().equals(topic.page()) || getDocument().getLength() == 0) {
            load(other.page());
        }
        topic = other;
        if (other.anchor().isEmpty()) {
            setCaretPosition(0);
        } else {
            EventQueue.invokeLater(() -> scrollToReference(other.anchor()));
        }
    }

    private void load(HelpPage page) {
        HTMLDocument document = (HTMLDocument) getEditorKit().createDefaultDocument();
        page.place().ifPresent(document::setBase);
        setDocument(document);
        document.getStyleSheet().addRule("a { color: " + hex(UIManager.getColor("Thrumwright.selected")) + " }");
        document.getStyleSheet().addRule("body { margin: " + MARGIN + "px } td { padding: 3px }");
        setText(page.html(widest()));
        getAccessibleContext().setAccessibleName(page.title());
    }

    /** Before it has its width, as wide as usual. */
    private int widest() {
        int room = getWidth() - 3 * Pixels.of(MARGIN);
        return room > 0 ? Math.min(Pixels.of(WIDEST), room) : Pixels.of(WIDEST);
    }

    @Override
    protected void paintComponent(Graphics g) {
        // pictures are rarely as large as they were taken
        ((Graphics2D) g).setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        super.paintComponent(g);
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}

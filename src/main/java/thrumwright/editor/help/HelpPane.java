package thrumwright.editor.help;

import java.awt.Color;
import java.awt.EventQueue;
import javax.swing.JEditorPane;
import javax.swing.UIManager;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;

/** Shows a page to be read; what it shows travels along with the program, and nothing on it is run or fetched. */
public final class HelpPane extends JEditorPane {
    private static final long serialVersionUID = 1L;

    private transient HelpTopic topic = HelpTopic.CONTENTS;

    public HelpPane() {
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
        document.getStyleSheet().addRule("body { margin: 16px } td { padding: 3px }");
        setText(page.html());
        getAccessibleContext().setAccessibleName(page.title());
    }

    private static String hex(Color colour) {
        return String.format("#%06x", colour.getRGB() & 0xffffff);
    }
}

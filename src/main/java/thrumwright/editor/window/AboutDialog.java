package thrumwright.editor.window;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.store.UserFolder;

/** What the program is, under which terms, and where it keeps what is the weaver's. */
public final class AboutDialog {
    private static final int ICON = 64;

    private final Workplace room;
    private final Texts texts;
    private final Modal<Void> modal;

    /** @param parent the window that it is about */
    public AboutDialog(Component parent, Workplace room) {
        this.room = room;
        this.texts = room.texts();
        this.modal = new Modal<>(parent, "about", texts.say("about.title"));
        JButton close = new JButton(texts.say("about.close"));
        close.setName("about.close");
        close.addActionListener(event -> modal.close());
        JButton copy = new JButton(texts.say("about.copy"));
        copy.setName("about.copy");
        copy.addActionListener(event ->
                Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(details()), null));
        JPanel panel = new JPanel(new MigLayout("insets 16, fill", "[grow, fill]", "[grow, fill][]"));
        panel.add(tabs(), "w 560::, h 320::, wrap");
        panel.add(copy, "split 2, grow 0, gapbefore push");
        panel.add(close, "grow 0");
        modal.fill(panel, close);
    }

    private JTabbedPane tabs() {
        JTabbedPane tabs = new JTabbedPane();
        tabs.setName("about.tabs");
        tabs.getAccessibleContext().setAccessibleName(texts.say("about.title"));
        tabs.addTab(texts.say("about.tab.program"), program());
        tabs.addTab(texts.say("about.tab.licence"), text("LICENSE", "about.tab.licence"));
        tabs.addTab(texts.say("about.tab.others"), text("THIRD-PARTY.txt", "about.tab.others"));
        return tabs;
    }

    private JComponent program() {
        JPanel panel = new JPanel(new MigLayout("insets 12 4 4 4, fillx", "[200!, fill][grow, fill]"));
        panel.add(new UnheardPicture(Icons.drawn("thrumwright", ICON)), "span 1 3, aligny top, gapafter 12");
        panel.add(Prose.heading(texts.say("about.heading", Map.of("version", room.version()))), "wrap");
        panel.add(new Prose(texts.say("about.does")), "wrap");
        panel.add(new Prose(texts.say("about.terms")), "wrap, gapbottom 12");
        facts().forEach((name, value) -> {
            panel.add(new Prose(name), "aligny top, gapafter 12");
            Prose said = new Prose(value);
            said.getAccessibleContext().setAccessibleName(name);
            panel.add(said, "wrap");
        });
        return panel;
    }

    private Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(texts.say("about.settings"), room.settings().folder());
        facts.put(texts.say("about.structures"), UserFolder.structures().toString());
        facts.put(texts.say("about.state"), UserFolder.state().toString());
        facts.put(texts.say("about.java"), System.getProperty("java.version"));
        facts.put(texts.say("about.system"), System.getProperty("os.name") + " " + System.getProperty("os.version"));
        return facts;
    }

    /** As somebody needs it who is to help: what it is and where it runs. */
    String details() {
        String heading = texts.say("about.heading", Map.of("version", room.version()));
        return facts().entrySet().stream()
                .map(each -> each.getKey() + ": " + each.getValue())
                .collect(Collectors.joining("\n", heading + "\n", "\n"));
    }

    /** One of the texts that travel along with the program. */
    private JComponent text(String file, String key) {
        JTextArea area = new JTextArea(read(file));
        area.setEditable(false);
        area.setCaretPosition(0);
        area.getAccessibleContext().setAccessibleName(texts.say(key));
        return new JScrollPane(area);
    }

    private String read(String file) {
        try (InputStream in = AboutDialog.class.getResourceAsStream("/META-INF/" + file)) {
            return in == null ? texts.say("about.no-text") : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return texts.say("about.no-text");
        }
    }

    public void show() {
        modal.ask();
    }
}

package thrumwright.editor.window.piece;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.form.FormTabs;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Theme;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.BudgetView;
import thrumwright.editor.view.CutsView;
import thrumwright.editor.view.EndsView;
import thrumwright.editor.view.FindingLine;
import thrumwright.editor.view.FindingsView;
import thrumwright.editor.view.HemsView;
import thrumwright.editor.view.HistoryView;
import thrumwright.editor.view.StepsView;
import thrumwright.editor.view.WhenSeen;

/** The views below the picture; each is made when it is first seen. */
final class ViewTabs {
    /** In the order of their tabs; the history has a command of its own. */
    private static final List<String> SHOWN = List.of("findings", "cuts", "hems", "ends", "budget", "steps");

    private final Session session;
    private final Texts texts;
    private final Commands commands;
    private final Runnable takeOver;
    private final JTabbedPane tabs = new JTabbedPane();
    private final JToggleButton fold = new JToggleButton();
    private HistoryView history;
    private Runnable unfold = () -> {};

    /** @param takeOver takes over what is being typed anywhere in the window */
    ViewTabs(Session session, Texts texts, Commands commands, Runnable takeOver) {
        this.session = session;
        this.texts = texts;
        this.commands = commands;
        this.takeOver = takeOver;
    }

    JTabbedPane component() {
        return tabs;
    }

    /** Their row of tabs; once, before the window is shown. */
    void layOut(Edits edits, PieceCanvas canvas) {
        tabs.setName("views");
        tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        tabs.addTab(texts.say("tab.findings"), new JPanel());
        add("tab.cuts", () -> new CutsView(session, texts).component());
        add("tab.hems", () -> scrolling(new HemsView(session, texts, canvas::palette)));
        add("tab.ends", () -> new EndsView(session, edits, texts, canvas::palette, commands::get).component());
        add("tab.budget", () -> scrolling(new BudgetView(session, texts, canvas::palette)));
        tabs.addTab(
                texts.say("tab.steps"),
                new WhenSeen(Theme::nameFonts, () -> new StepsView(session, texts).component()));
        tabs.addTab(texts.say("tab.history"), new JPanel());
        FormTabs.leaveKeys(tabs);
    }

    /** What can't wait until it is seen; once, when there is time for it. */
    void build(Edits edits) {
        tabs.setComponentAt(0, new FindingsView(session, edits, texts, takeOver, this::countFindings).component());
        history = new HistoryView(session, texts, this::jump);
        tabs.setComponentAt(tabs.getTabCount() - 1, history.component());
        tabs.putClientProperty("JTabbedPane.trailingComponent", trailing());
        countFindings(session.findings().all().size());
    }

    private void add(String key, Supplier<JComponent> make) {
        tabs.addTab(texts.say(key), new WhenSeen(make));
    }

    /** A picture that needs some height, in a low window too. */
    private static JComponent scrolling(JComponent picture) {
        Column column = new Column(new BorderLayout());
        column.add(picture);
        return Column.scrolling(column);
    }

    private void countFindings(int count) {
        if (tabs.getTabCount() > 0) {
            tabs.setTitleAt(0, texts.say("tab.findings.count", Map.of("count", count)));
        }
    }

    /** Beside the tabs, so that it can be read while the views are folded away. */
    private JComponent trailing() {
        JPanel trailing = new JPanel(new MigLayout("insets 0 12 0 4, fillx", "[grow, fill, 0::]8[]", "[grow, center]"));
        trailing.setOpaque(false);
        trailing.add(new FindingLine(session, texts.locale(), () -> toView(0)), "w 0:0:, hidemode 2");
        fold.setName("views.fold");
        fold.putClientProperty("JButton.buttonType", "toolBarButton");
        fold.putClientProperty("FlatLaf.styleClass", "unmarked");
        fold.setHideActionText(true);
        trailing.add(fold);
        return trailing;
    }

    /** @param unfold shows the views, if they are folded away */
    void addCommands(Runnable unfold) {
        this.unfold = unfold;
        tabs.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (tabs.indexAtLocation(event.getX(), event.getY()) >= 0) {
                    unfold.run();
                }
            }
        });
        fold.setAction(commands.get("views-open"));
        fold.getAccessibleContext()
                .setAccessibleName(String.valueOf(fold.getAction().getValue(Action.NAME)));
        fold.setIcon(Icons.of("raise"));
        fold.setSelectedIcon(Icons.of("folded-out"));
        for (int i = 0; i < SHOWN.size(); i++) {
            int index = i;
            commands.add("show-" + SHOWN.get(i), () -> toView(index));
        }
        commands.add("history", this::toHistory);
    }

    /** Brings a view to the front and gives it the keyboard. */
    private void toView(int index) {
        unfold.run();
        tabs.setSelectedIndex(index);
        // a view that is seen for the first time is being made by the events that are on their way
        EventQueue.invokeLater(this::enter);
    }

    private void enter() {
        JComponent first = firstForKeys((JComponent) tabs.getSelectedComponent());
        (first == null ? tabs : first).requestFocusInWindow();
    }

    /** The first component within another that keys mean anything to; null if there is none. */
    private static JComponent firstForKeys(JComponent component) {
        boolean meant = hasKeys(component, JComponent.WHEN_FOCUSED)
                || component instanceof JTable && hasKeys(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        if (meant && component.isFocusable() && component.isEnabled() && !(component instanceof JScrollBar)) {
            return component;
        }
        for (Component child : component.getComponents()) {
            JComponent first = child instanceof JComponent inner && inner.isVisible() ? firstForKeys(inner) : null;
            if (first != null) {
                return first;
            }
        }
        return null;
    }

    private static boolean hasKeys(JComponent component, int condition) {
        InputMap keys = component.getInputMap(condition);
        return keys != null && keys.allKeys() != null;
    }

    private void toHistory() {
        unfold.run();
        tabs.setSelectedComponent(history.component());
        history.enter();
    }

    private void jump(int count) {
        takeOver.run();
        if (count <= session.history().names().size()) {
            session.jump(count);
        }
    }
}

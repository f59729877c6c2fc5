package thrumwright.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Locale;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.form.Desk;
import thrumwright.editor.form.FormTabs;
import thrumwright.editor.look.Icons;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.BudgetView;
import thrumwright.editor.view.CutsView;
import thrumwright.editor.view.FindingsView;
import thrumwright.editor.view.HemsView;
import thrumwright.editor.view.StepsView;

/** One piece in a window. */
final class EditorWindow {
    private final Workroom room;
    private final Session session;
    private final Texts texts;
    private final Desk desk;
    private final JFrame frame = new JFrame();
    private final MessageBar messages;
    private final PieceCanvas canvas;
    private final LabelColumn labels;
    private final FormTabs forms;
    private final JTabbedPane views = new JTabbedPane();
    private final JLabel status = new JLabel();
    private final Commands commands;
    private final FileWork files;
    private final BlockWork blocks;

    EditorWindow(Workroom room, Session session) {
        this.room = room;
        this.session = session;
        this.texts = room.texts();
        Edits edits = new Edits(texts.phrases(), texts.words());
        this.desk = new Desk(session, edits, texts);
        this.messages = new MessageBar(texts);
        this.canvas = new PieceCanvas(session, texts, room.theme().palette());
        this.labels = new LabelColumn(canvas);
        this.forms = new FormTabs(desk);
        this.commands = new Commands(new CommandTexts(Locale.UK, menuKey()), Icons::of, desk::takeOver);
        this.files = new FileWork(
                this,
                new Dialogs(
                        frame,
                        texts,
                        room.structures(),
                        room.settings().recent().stream()
                                .findFirst()
                                .map(java.nio.file.Path::getParent)
                                .orElse(java.nio.file.Path.of(System.getProperty("user.home")))));
        this.blocks = new BlockWork(session, edits, canvas);
        canvas.setGestures(new thrumwright.editor.canvas.Gesturing(desk.edits(), desk::takeOver));
        build();
    }

    private static String menuKey() {
        return java.awt.GraphicsEnvironment.isHeadless()
                        || Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx()
                                != java.awt.event.InputEvent.META_DOWN_MASK
                ? "ctrl"
                : "meta";
    }

    private void build() {
        addCommands();
        frame.setName("editor");
        frame.setJMenuBar(new Menus(commands, texts, session).bar(room, files));
        JPanel top = new JPanel(new BorderLayout());
        top.add(new Menus(commands, texts, session).toolBar());
        top.add(messages.component(), BorderLayout.SOUTH);
        frame.add(top, BorderLayout.NORTH);
        frame.add(middle());
        status.setName("status");
        status.setBorder(BorderFactory.createEmptyBorder(4, 12, 5, 12));
        frame.add(status, BorderLayout.SOUTH);
        commands.bindWindow(frame.getRootPane());
        commands.bindCanvas(canvas);
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                desk.takeOver();
                files.close();
            }
        });
        session.listen(this::changed);
        changed(Change.FILE);
        size();
    }

    private JComponent middle() {
        FindingsView findings = new FindingsView(session, texts, this::countFindings);
        views.setName("views");
        views.insertTab(texts.say("tab.findings"), null, findings.component(), null, 0);
        views.addTab(texts.say("tab.cuts"), new CutsView(session, texts).component());
        views.addTab(texts.say("tab.hems"), new HemsView(session, texts, canvas::palette));
        views.addTab(texts.say("tab.budget"), new BudgetView(session, texts, canvas::palette));
        views.addTab(texts.say("tab.steps"), new StepsView(session, texts).component());
        countFindings(session.plan().findings().size());
        JSplitPane left = new JSplitPane(JSplitPane.VERTICAL_SPLIT, canvasScroll(), views);
        left.setName("canvasAndViews");
        left.setResizeWeight(1);
        left.setBorder(null);
        views.setPreferredSize(new Dimension(400, 160));
        JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, forms.component());
        whole.setName("canvasAndForms");
        whole.setResizeWeight(1);
        whole.setBorder(null);
        forms.component().setPreferredSize(new Dimension(330, 400));
        forms.component().setMinimumSize(new Dimension(290, 100));
        return whole;
    }

    private void countFindings(int count) {
        if (views.getTabCount() > 0) {
            views.setTitleAt(0, texts.say("tab.findings.count", Map.of("count", count)));
        }
    }

    private JScrollPane canvasScroll() {
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.setBorder(null);
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setRowHeaderView(labels);
        scroll.getRowHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        JPanel above = new JPanel();
        above.setPreferredSize(new Dimension(10, 24));
        scroll.setColumnHeaderView(above);
        scroll.setCorner(ScrollPaneConstants.UPPER_LEFT_CORNER, labels.titles());
        return scroll;
    }

    private void addCommands() {
        files.addTo(commands);
        blocks.addTo(commands);
        commands.add("undo", session::undo, () -> session.history().undoName().isPresent());
        commands.add("redo", session::redo, () -> session.history().redoName().isPresent());
    }

    private void changed(Change change) {
        String title = session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
        String key = session.dirty() ? "window.unsaved" : "window";
        frame.setTitle(texts.say(key, Map.of("title", title)));
        frame.getRootPane().putClientProperty("Window.documentModified", session.dirty());
        status.setText(Summary.of(session.plan(), texts));
        commands.refresh();
        undoNames();
        if (change == Change.SELECTION) {
            forms.bringBlock();
            session.selection()
                    .lead()
                    .ifPresent(id -> canvas.reveal(session.selection().place(), id));
        }
    }

    private void undoNames() {
        name("undo", session.history().undoName().map(what -> texts.say("undo.of", Map.of("what", what))));
        name("redo", session.history().redoName().map(what -> texts.say("redo.of", Map.of("what", what))));
    }

    private void name(String id, java.util.Optional<String> text) {
        commands.get(id).putValue(javax.swing.Action.SHORT_DESCRIPTION, text.orElse(texts.say(id + ".nothing")));
    }

    private void size() {
        Rectangle screen = frame.getGraphicsConfiguration() == null
                ? new Rectangle(0, 0, 1280, 800)
                : frame.getGraphicsConfiguration().getBounds();
        frame.setMinimumSize(new Dimension(860, 540));
        frame.setSize(Math.min(1320, screen.width), Math.min(860, screen.height));
        frame.setLocationByPlatform(true);
    }

    void themeChanged() {
        canvas.setPalette(room.theme().palette());
        frame.getRootPane().setBackground(UIManager.getColor("Panel.background"));
    }

    void show() {
        frame.setVisible(true);
        canvas.requestFocusInWindow();
    }

    JFrame frame() {
        return frame;
    }

    Session session() {
        return session;
    }

    Workroom room() {
        return room;
    }

    MessageBar messages() {
        return messages;
    }

    Desk desk() {
        return desk;
    }

    FileWork files() {
        return files;
    }

    void problem(String sentence) {
        messages.problem(sentence);
    }

    void dispose() {
        frame.dispose();
        room.closed(this);
    }
}

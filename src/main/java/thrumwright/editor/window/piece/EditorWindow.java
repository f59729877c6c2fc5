package thrumwright.editor.window.piece;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import thrumwright.editor.Workroom;
import thrumwright.editor.canvas.AmountEntry;
import thrumwright.editor.canvas.Gesturing;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.WidthRule;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.files.FileDrop;
import thrumwright.editor.form.Desk;
import thrumwright.editor.form.FormTabs;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.shelf.BlockShelf;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.BudgetView;
import thrumwright.editor.view.CutsView;
import thrumwright.editor.view.EndsView;
import thrumwright.editor.view.FindingsView;
import thrumwright.editor.view.HemsView;
import thrumwright.editor.view.HistoryView;
import thrumwright.editor.view.StepsView;
import thrumwright.editor.view.WhenSeen;
import thrumwright.editor.window.KeyList;
import thrumwright.editor.window.KeysWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.editor.window.classroom.ClassWindow;
import thrumwright.editor.window.sheet.SheetSettings;
import thrumwright.editor.window.sheet.SheetWindow;
import thrumwright.output.SheetLook;
import thrumwright.store.ClassFile;

/** One piece in a window. */
public final class EditorWindow {
    /** A window lower than that has no room for everything, pixels. */
    private static final int LOW = 800;

    /** The views in the order of their tabs; the history has a command of its own. */
    private static final List<String> SHOWN = List.of("findings", "cuts", "hems", "ends", "budget", "steps");

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
    private final StructureWork structures;
    private final AmountEntry amount;
    private final ClipboardWork clipboard;
    private final BlockShelf shelf;
    private final HistoryView history;
    private final FileDrop drop;
    private Parts parts;
    private SheetWindow sheet;
    private KeysWindow keys;
    private ClassWindow classWindow;

    public EditorWindow(Workroom room, Session session) {
        this.room = room;
        this.session = session;
        this.texts = room.texts();
        Edits edits = new Edits(texts.phrases(), texts.words());
        this.desk = new Desk(session, edits, texts);
        this.messages = new MessageBar(texts);
        this.canvas = new PieceCanvas(session, texts, room.theme().palette());
        this.labels = new LabelColumn(canvas);
        this.forms = new FormTabs(desk);
        this.commands = new Commands(new CommandTexts(texts.locale(), menuKey()), Icons::of, this::takeOver);
        this.files = new FileWork(
                this,
                new Dialogs(
                        frame,
                        room,
                        room.settings().recent().stream()
                                .findFirst()
                                .map(java.nio.file.Path::getParent)
                                .orElse(java.nio.file.Path.of(System.getProperty("user.home")))));
        this.amount = new AmountEntry(labels, canvas, edits);
        this.structures = new StructureWork(this, edits);
        this.blocks = new BlockWork(session, edits, canvas, this::edit);
        this.clipboard = new ClipboardWork(this, edits);
        canvas.setGestures(new Gesturing(desk.edits(), this::takeOver, amount::open));
        this.drop = new FileDrop(files::open);
        this.history = new HistoryView(session, texts, this::jump);
        this.shelf = new BlockShelf(canvas, labels, edits, key -> commands.run("add-" + key));
    }

    public static String menuKey() {
        return java.awt.GraphicsEnvironment.isHeadless()
                        || Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx()
                                != java.awt.event.InputEvent.META_DOWN_MASK
                ? "ctrl"
                : "meta";
    }

    /** Puts everything in its place; once, before the window is shown. */
    public void build() {
        size();
        frame.setName("editor");
        JComponent middle = middle();
        addCommands();
        Menus menus = new Menus(commands, texts);
        frame.setJMenuBar(menus.bar(room, files));
        JPanel top = new JPanel(new BorderLayout());
        top.add(menus.toolBar());
        top.add(messages.component(), BorderLayout.SOUTH);
        frame.add(top, BorderLayout.NORTH);
        frame.add(middle);
        status.setName("status");
        status.setBorder(BorderFactory.createEmptyBorder(Pixels.of(4), Pixels.of(12), Pixels.of(5), Pixels.of(12)));
        frame.add(status, BorderLayout.SOUTH);
        commands.add("block-menu", () -> {
            Point at = canvas.selectedPoint();
            menus.popup().show(canvas, at.x, at.y);
        });
        commands.bindWindow(frame.getRootPane());
        commands.bindCanvas(canvas);
        canvas.setMenuAsked(event -> menus.popup().show(canvas, event.getX(), event.getY()));
        drop.on(frame.getRootPane());
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                takeOver();
                files.close();
            }
        });
        session.listen(this::changed);
        changed(Change.FILE);
    }

    private JComponent middle() {
        FindingsView findings = new FindingsView(session, desk.edits(), texts, this::takeOver, this::countFindings);
        views.setName("views");
        views.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        views.insertTab(texts.say("tab.findings"), null, findings.component(), null, 0);
        addView("tab.cuts", () -> new CutsView(session, texts).component());
        addView("tab.hems", () -> scrolling(new HemsView(session, texts, canvas::palette)));
        addView(
                "tab.ends",
                () -> new EndsView(session, desk.edits(), texts, canvas::palette, commands::get).component());
        addView("tab.budget", () -> scrolling(new BudgetView(session, texts, canvas::palette)));
        addView("tab.steps", () -> new StepsView(session, texts).component());
        views.addTab(texts.say("tab.history"), history.component());
        FormTabs.leaveKeys(views);
        countFindings(session.plan().findings().size());
        JPanel right = new JPanel(new BorderLayout());
        right.setName("formsAndShelf");
        right.add(forms.component());
        right.add(shelf, BorderLayout.SOUTH);
        openShelf();
        parts = new Parts(new Geometry(room.settings()), canvasScroll(), views, right);
        parts.addTo(commands);
        return parts.component();
    }

    private void addView(String key, Supplier<JComponent> make) {
        views.addTab(texts.say(key), new WhenSeen(make));
    }

    /** As it was left; in a low window it is folded away at first, since the fields need the room. */
    private void openShelf() {
        shelf.setOpen(
                room.settings().get("shelf.open").map(Boolean::valueOf).orElse(frame.getHeight() >= Pixels.of(LOW)));
        shelf.whenFolded(open -> {
            room.settings().put("shelf.open", String.valueOf(open));
            commands.refresh();
        });
    }

    /** A picture that needs some height, in a low window too. */
    private static JComponent scrolling(JComponent picture) {
        Column column = new Column(new BorderLayout());
        column.add(picture);
        return Column.scrolling(column);
    }

    private void countFindings(int count) {
        if (views.getTabCount() > 0) {
            views.setTitleAt(0, texts.say("tab.findings.count", Map.of("count", count)));
        }
    }

    private JScrollPane canvasScroll() {
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setRowHeaderView(labels);
        scroll.getRowHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setColumnHeaderView(new WidthRule(canvas));
        scroll.getColumnHeader().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        scroll.setCorner(ScrollPaneConstants.UPPER_LEFT_CORNER, labels.titles());
        scroll.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                labels.setRoom(scroll.getWidth());
            }
        });
        return scroll;
    }

    private void addCommands() {
        files.addTo(commands);
        blocks.addTo(commands);
        structures.addTo(commands);
        commands.add("amount", amount::open, () -> !session.selection().isEmpty());
        commands.add("shelf", this::toShelf);
        commands.addSwitch("shelf-fold", () -> shelf.fold(shelf.isOpen()), shelf::isOpen);
        new ViewWork(session, canvas, room).addTo(commands);
        clipboard.addTo(commands);
        for (int i = 0; i < SHOWN.size(); i++) {
            int index = i;
            commands.add("show-" + SHOWN.get(i), () -> toView(index));
        }
        commands.add("history", this::toHistory);
        commands.add("sheet", () -> sheet().show());
        commands.add("keys", () -> keys().show());
        commands.add("class", () -> classWindow().show());
        commands.add("print", () -> sheet().showAnd("sheet-print"));
        commands.add("export", () -> sheet().showAnd("sheet-export"));
        commands.add("undo", session::undo, () -> session.history().undoName().isPresent());
        commands.add("redo", session::redo, () -> session.history().redoName().isPresent());
    }

    /** Brings a view to the front and gives it the keyboard. */
    private void toView(int index) {
        views.setSelectedIndex(index);
        JComponent first = firstForKeys((JComponent) views.getSelectedComponent());
        (first == null ? views : first).requestFocusInWindow();
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
        views.setSelectedComponent(history.component());
        history.enter();
    }

    private void jump(int count) {
        takeOver();
        if (count <= session.history().names().size()) {
            session.jump(count);
        }
    }

    private void toShelf() {
        shelf.fold(false);
        shelf.enter();
    }

    /**
     * Does an edit, or says why it refuses.
     *
     * @return whether it was done
     */
    public boolean edit(Edit edit) {
        try {
            session.edit(edit);
            return true;
        } catch (IllegalArgumentException e) {
            problem(e.getMessage());
            return false;
        }
    }

    /** Takes over whatever is being typed anywhere in the window. */
    public void takeOver() {
        amount.take();
        desk.takeOver();
    }

    private void changed(Change change) {
        String title = session.piece().title().isBlank()
                ? texts.say("untitled")
                : session.piece().title();
        String key = session.dirty() ? "window.unsaved" : "window";
        frame.setTitle(texts.say(key, Map.of("title", title)));
        frame.getRootPane().putClientProperty("Window.documentModified", session.dirty());
        status.setText(Summary.of(session.plan(), texts));
        status.setToolTipText(status.getText());
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
        Geometry.least(frame, 683, 384);
        new Geometry(room.settings()).restore(frame, room.windows().size() - 1);
    }

    public void themeChanged() {
        drop.on(frame.getRootPane());
        canvas.setPalette(room.theme().palette());
        frame.getRootPane().setBackground(UIManager.getColor("Panel.background"));
    }

    public void toFront() {
        show();
        frame.toFront();
    }

    public void show() {
        frame.setVisible(true);
        canvas.requestFocus();
    }

    public JFrame frame() {
        return frame;
    }

    public Session session() {
        return session;
    }

    public Workroom room() {
        return room;
    }

    MessageBar messages() {
        return messages;
    }

    public Desk desk() {
        return desk;
    }

    StructureWork structures() {
        return structures;
    }

    public FileWork files() {
        return files;
    }

    /** The window of the step sheet; made when it is first wanted. */
    public SheetWindow sheet() {
        if (sheet == null) {
            sheet = new SheetWindow(this);
        }
        return sheet;
    }

    /** The list of all keys; made when it is first wanted. */
    private KeysWindow keys() {
        if (keys == null) {
            CommandTexts declared = new CommandTexts(texts.locale(), menuKey());
            keys = new KeysWindow(room, KeyList.of(declared, frame.getJMenuBar(), texts));
        }
        return keys;
    }

    /** How the sheet is set up, or was the last time. */
    public SheetLook sheetLook() {
        return sheet != null
                ? sheet.setup().choice().look()
                : new SheetSettings(room.settings(), Locale.getDefault())
                        .choice()
                        .look();
    }

    /** The window of the class that weaves this piece; made, with one loom, when it is first wanted. */
    public ClassWindow classWindow() {
        if (classWindow == null) {
            classWindow = new ClassWindow(this, ClassSession.of(session.piece()));
        }
        return classWindow;
    }

    /** Shows a class that weaves this piece. */
    public void openClass(ClassFile file, Path path) {
        if (classWindow == null) {
            classWindow = new ClassWindow(this, new ClassSession(file, Optional.of(path)));
        } else {
            classWindow.work().take(file, path);
        }
        classWindow.session().follow(session.piece());
        classWindow.show();
    }

    /** Whether there is no class that the teacher wants to save or to go on with. */
    boolean mayLeaveClass() {
        return classWindow == null || classWindow.work().mayLeave();
    }

    /** Tells a problem, where the weaver is: beside the piece or beside its sheet. */
    public void problem(String sentence) {
        if (sheet != null && sheet.frame().isActive()) {
            sheet.problem(sentence);
        } else if (classWindow != null && classWindow.frame().isActive()) {
            classWindow.problem(sentence);
        } else {
            messages.problem(sentence);
        }
    }

    public void dispose() {
        new Geometry(room.settings()).remember(frame);
        parts.remember();
        if (keys != null) {
            keys.dispose();
        }
        if (sheet != null) {
            sheet.dispose();
        }
        if (classWindow != null) {
            classWindow.dispose();
        }
        frame.dispose();
        room.closed(this);
    }
}

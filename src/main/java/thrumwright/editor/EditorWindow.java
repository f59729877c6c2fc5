package thrumwright.editor;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JToolBar;
import javax.swing.WindowConstants;
import thrumwright.block.Block;
import thrumwright.drawing.Fonts;
import thrumwright.editor.edit.Chosen;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Words;

/** One window with one piece. */
final class EditorWindow {
    private final JFrame frame = new JFrame();
    private final Session session;
    private final Phrases phrases;
    private final Words words;
    private final Actions actions;
    private final Canvas canvas;
    private final FileWork files;
    private final Fonts fonts;
    private Look look;

    EditorWindow(Piece piece, Documents documents, Fonts fonts, Look look, Phrases phrases, Words words) {
        this.session = new Session(piece, piece);
        this.phrases = phrases;
        this.words = words;
        this.fonts = fonts;
        this.look = look;
        this.actions = new Actions(phrases);
        this.canvas = new Canvas(session, phrases);
        this.files = new FileWork(frame, session, documents, fonts, phrases, this::another);
        declare();
        build();
        session.listen(this::refresh);
        refresh();
    }

    JFrame frame() {
        return frame;
    }

    Session session() {
        return session;
    }

    /** Another window for another piece. */
    private void another(Piece piece, Documents documents) {
        EditorWindow window = new EditorWindow(piece, documents, fonts, look, phrases, words);
        window.frame.setLocation(frame.getX() + 30, frame.getY() + 30);
        window.frame.setVisible(true);
    }

    private void declare() {
        actions.add("begin", files::begin);
        actions.add("open", files::open);
        actions.add("save", files::save);
        actions.add("save-as", files::saveAs);
        actions.add("sheet", files::exportSheet);
        actions.add("close", this::close);
        actions.add(
                "undo", session::undo, () -> session.undoable().isPresent(), () -> named("undo", session.undoable()));
        actions.add(
                "redo", session::redo, () -> session.redoable().isPresent(), () -> named("redo", session.redoable()));
        NewBlocks.all().forEach((id, block) -> actions.add(id, () -> add(block), this::canAdd));
        actions.add("block-up", () -> move(1), () -> canMove(1));
        actions.add("block-down", () -> move(-1), () -> canMove(-1));
        actions.add("block-remove", this::remove, this::canEditChosen);
        actions.add(
                "top-alone",
                () -> session.apply(Edits.topOnItsOwn(phrases.say("edit.top-alone"))),
                () -> session.piece().topFollows());
        actions.add(
                "top-follows",
                () -> session.apply(Edits.topFollows(phrases.say("edit.top-follows"))),
                () -> !session.piece().topFollows());
        actions.add("closer", () -> canvas.zoomBy(1.25));
        actions.add("farther", () -> canvas.zoomBy(0.8));
        actions.add("whole", canvas::whole);
        actions.add(
                "look", this::otherLook, () -> true, () -> phrases.say(look == Look.DARK ? "look.light" : "look.dark"));
    }

    private String named(String id, Optional<String> what) {
        return what.map(name -> phrases.say(id + ".what", Map.of("what", name))).orElse(phrases.say(id + ".text"));
    }

    private void otherLook() {
        look = look == Look.DARK ? Look.LIGHT : Look.DARK;
        look.use(fonts);
        canvas.setPalette(look.palette());
        actions.refresh();
    }

    private Place placeToAdd() {
        return session.chosen().map(Chosen::place).orElse(Place.START);
    }

    private boolean canAdd() {
        return placeToAdd() == Place.START || !session.piece().topFollows();
    }

    private boolean canEditChosen() {
        return session.chosen().isPresent() && canAdd();
    }

    private void add(Block block) {
        session.apply(Edits.add(phrases.say("edit.add", Map.of("block", words.name(block))), placeToAdd(), block));
    }

    private Block chosenBlock() {
        Chosen chosen = session.chosen().orElseThrow();
        return session.piece().block(chosen.place(), chosen.blockId()).orElseThrow();
    }

    private boolean canMove(int up) {
        if (!canEditChosen()) {
            return false;
        }
        Chosen chosen = session.chosen().orElseThrow();
        int to = session.piece().end(chosen.place()).indexOf(chosen.blockId()) + up;
        return to >= 0 && to < session.piece().end(chosen.place()).blocks().size();
    }

    private void move(int up) {
        String key = up > 0 ? "edit.up" : "edit.down";
        session.apply(Edits.move(
                phrases.say(key, Map.of("block", words.name(chosenBlock()))),
                session.chosen().orElseThrow(),
                up));
    }

    private void remove() {
        session.apply(Edits.remove(
                phrases.say("edit.remove", Map.of("block", words.name(chosenBlock()))),
                session.chosen().orElseThrow()));
    }

    private void build() {
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                close();
            }
        });
        canvas.setPalette(look.palette());
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        scroll.getHorizontalScrollBar().setUnitIncrement(24);
        JSplitPane left = new JSplitPane(JSplitPane.VERTICAL_SPLIT, scroll, findings());
        left.setResizeWeight(1);
        left.setBorder(null);
        JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, forms());
        whole.setResizeWeight(1);
        whole.setBorder(null);
        frame.setJMenuBar(menus());
        frame.add(toolbar(), BorderLayout.NORTH);
        frame.add(whole);
        frame.setSize(new Dimension(1280, 820));
        frame.setMinimumSize(new Dimension(900, 520));
    }

    private JComponent findings() {
        JPanel panel = new JPanel(new BorderLayout());
        JScrollPane list = new JScrollPane(new FindingList(session, phrases));
        list.setBorder(null);
        panel.add(list);
        panel.setBorder(BorderFactory.createTitledBorder(phrases.say("findings.name")));
        panel.setPreferredSize(new Dimension(300, 120));
        return panel;
    }

    private JComponent forms() {
        JTabbedPane tabs = new JTabbedPane();
        tabs.setName("forms");
        tabs.addTab(phrases.say("tab.block"), new BlockForm(session, phrases, actions));
        JScrollPane piece = new JScrollPane(PieceForm.of(session, phrases));
        piece.setBorder(null);
        tabs.addTab(phrases.say("tab.piece"), piece);
        tabs.addTab(phrases.say("tab.yarns"), new YarnForm(session, phrases));
        tabs.setPreferredSize(new Dimension(370, 600));
        tabs.setMinimumSize(new Dimension(340, 200));
        return tabs;
    }

    private JMenuBar menus() {
        JMenuBar bar = new JMenuBar();
        bar.add(menu("menu.file", List.of("begin", "open", "save", "save-as", "sheet", "close")));
        bar.add(menu("menu.edit", List.of("undo", "redo", "block-up", "block-down", "block-remove")));
        bar.add(menu("menu.add", List.copyOf(NewBlocks.all().keySet())));
        bar.add(menu("menu.top", List.of("top-follows", "top-alone")));
        bar.add(menu("menu.view", List.of("closer", "farther", "whole", "look")));
        return bar;
    }

    private JMenu menu(String key, List<String> ids) {
        JMenu menu = new JMenu(phrases.say(key));
        menu.setName(key);
        ids.forEach(id -> menu.add(item(id)));
        return menu;
    }

    private JMenuItem item(String id) {
        JMenuItem item = new JMenuItem(actions.get(id));
        item.setName("menu." + id);
        return item;
    }

    private JToolBar toolbar() {
        JToolBar bar = new JToolBar();
        bar.setFloatable(false);
        bar.add(addButton());
        for (String id : List.of(
                "block-up",
                "block-down",
                "block-remove",
                "undo",
                "redo",
                "save",
                "sheet",
                "farther",
                "whole",
                "closer")) {
            if (List.of("undo", "save", "farther").contains(id)) {
                bar.addSeparator();
            }
            bar.add(button(actions.get(id), id));
        }
        return bar;
    }

    /** Short texts on the toolbar; what undo would take back stands in the menu. */
    private JButton button(Action action, String id) {
        JButton button = new JButton(action);
        button.setHideActionText(true);
        button.setText(phrases.say(id + ".short"));
        button.setName(id);
        return button;
    }

    private JButton addButton() {
        JButton button = new JButton(phrases.say("add.text"));
        button.setName("add");
        button.setToolTipText(phrases.say("add.tip"));
        JPopupMenu popup = new JPopupMenu();
        NewBlocks.all().keySet().forEach(id -> popup.add(new JMenuItem(actions.get(id))));
        button.addActionListener(event -> popup.show(button, 0, button.getHeight()));
        return button;
    }

    private void close() {
        if (files.mayClose()) {
            frame.dispose();
        }
    }

    private void refresh() {
        actions.refresh();
        frame.setTitle(phrases.say(
                session.isDirty() ? "window.changed" : "window.title",
                Map.of(
                        "piece",
                        session.piece().title().isBlank()
                                ? phrases.say("window.untitled")
                                : session.piece().title())));
    }
}

package thrumwright.editor.window.piece;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import thrumwright.editor.canvas.AmountEntry;
import thrumwright.editor.canvas.Board;
import thrumwright.editor.canvas.LabelColumn;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.gesture.Gesturing;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.files.Dialogs;
import thrumwright.editor.files.FileDrop;
import thrumwright.editor.files.Questions;
import thrumwright.editor.form.Desk;
import thrumwright.editor.form.FormTabs;
import thrumwright.editor.look.Following;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.shelf.BlockShelf;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.editor.window.classroom.ClassWindow;
import thrumwright.editor.window.sheet.SheetWindow;
import thrumwright.output.SheetLook;
import thrumwright.piece.ClassSet;
import thrumwright.store.ClassFile;
import thrumwright.store.keeping.Fingerprint;
import thrumwright.store.keeping.Journals;

/** One piece in a window. */
public final class EditorWindow implements MainWindow, PieceWindow {
    /** A window lower than that has no room for everything, pixels. */
    private static final int LOW = 800;

    private final Workplace place;
    private final OtherWindows windows;
    private final Session session;
    private final Texts texts;
    private final Desk desk;
    private final JFrame frame;
    private final MessageBar messages;
    private final PieceCanvas canvas;
    private final LabelColumn labels;
    private final FormTabs forms;
    private final JLabel status = new JLabel();
    private final Following saying = new Following(this::say);
    private final Commands commands;
    private final FileWork files;
    private final BlockWork blocks;
    private final StructureWork structures;
    private final AmountEntry amount;
    private final ClipboardWork clipboard;
    private final HistoryWork history;
    private final ViewTabs views;
    private final SideWindows beside;
    private final FileDrop drop;
    private final Menus menus;
    private final Runnable noLonger;
    private final JPanel right = new JPanel(new BorderLayout());
    private Board board;
    private BlockShelf shelf;
    private Parts parts;

    /**
     * @param frame bare as yet
     * @param canvas of the session's piece
     */
    public EditorWindow(Workplace place, OtherWindows windows, Session session, JFrame frame, PieceCanvas canvas) {
        this.frame = frame;
        this.canvas = canvas;
        this.place = place;
        this.windows = windows;
        this.session = session;
        this.texts = place.texts();
        Edits edits = new Edits(texts.phrases(), texts.words());
        this.desk = new Desk(session, edits, texts, place.cupboard()::stash);
        this.messages = new MessageBar(texts, frame.getRootPane());
        this.beside = new SideWindows(this, messages, windows.help());
        this.labels = new LabelColumn(canvas);
        this.forms = new FormTabs(desk);
        this.commands = new Commands(new CommandTexts(texts.locale(), Commands.menuKey()), Icons::of, this::takeOver);
        this.files = new FileWork(this, windows, place, beside, new Dialogs(frame, place, folder()));
        this.amount = new AmountEntry(labels, canvas, edits);
        this.structures = new StructureWork(session, edits, place, beside, this::questions, files::begin, frame);
        this.blocks = new BlockWork(session, edits, canvas, this::edit);
        this.clipboard = new ClipboardWork(session, edits, texts, beside, this::edit);
        this.history = new HistoryWork(session, commands, texts);
        labels.whenDesignAsked(forms::takeDesign);
        canvas.setGestures(new Gesturing(desk.edits(), this::takeOver, amount::open));
        this.drop = new FileDrop(this::open);
        this.views = new ViewTabs(session, texts, commands, this::takeOver);
        this.menus = new Menus(commands, texts);
        this.noLonger = place.whenLookChanges(this::lookChanged);
    }

    /** Where to begin looking for files: beside the last that was worked on. */
    private Path folder() {
        return place.settings().recent().stream()
                .findFirst()
                .map(Path::getParent)
                .orElse(Path.of(System.getProperty("user.home")));
    }

    /** Puts everything in its place; once, before the window is shown. */
    public void build() {
        outline().forEach(Runnable::run);
        rest().forEach(Runnable::run);
    }

    /**
     * Lays the piece and the window's parts out, in the sizes that they will have, before the window is shown; in steps that none takes
     * long, each once and in this order. So the piece can be seen before there was time for all that stands around it.
     */
    public List<Runnable> outline() {
        return List.of(this::size, menus::layOut, () -> views.layOut(desk.edits(), canvas), this::place, this::layOut);
    }

    private void place() {
        right.setName("formsAndShelf");
        right.add(forms.component());
        board = new Board(canvas, labels);
        board.bare();
    }

    private void layOut() {
        parts = new Parts(new Geometry(place.settings()), board, views.component(), right);
        frame.setJMenuBar(menus.bar());
        frame.add(menus.tools(), BorderLayout.NORTH);
        frame.add(parts.component());
        status.setName("status");
        status.setBorder(BorderFactory.createEmptyBorder(Pixels.of(4), Pixels.of(12), Pixels.of(5), Pixels.of(12)));
        status.setText(Summary.of(session.plan(), texts));
        frame.add(status, BorderLayout.SOUTH);
        frame.setTitle(title());
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new Watch());
    }

    /** All that is still to be made of a window that is laid out, in steps that none takes long; each once, in this order. */
    public List<Runnable> rest() {
        return List.of(
                () -> board.annotate(),
                () -> board.list(),
                forms::build,
                this::buildShelf,
                this::addCommands,
                menus::fillTools,
                () -> menus.fill(place, this::open),
                () -> views.build(desk.edits()),
                this::listen);
    }

    /** @param painted run on the event thread, once the piece has been painted */
    public void show(Runnable painted) {
        new FirstPicture(board, painted);
        show();
    }

    private final class Watch extends WindowAdapter {
        @Override
        public void windowActivated(WindowEvent event) {
            files.lookAgain();
        }

        @Override
        public void windowClosing(WindowEvent event) {
            takeOver();
            files.close();
        }
    }

    /** From now on the window answers. */
    private void listen() {
        commands.add("block-menu", () -> menus.popup(canvas, canvas.looking().selectedPoint()));
        commands.bindWindow(frame.getRootPane());
        commands.bindCanvas(canvas);
        canvas.setMenuAsked(event -> menus.popup(canvas, event.getPoint()));
        drop.on(frame.getRootPane());
        session.listen(this::changed);
        changed(Change.FILE);
        files.tellUnknown();
        // drawn once there is something to look at, and where nobody waits
        EventQueue.invokeLater(() -> Icons.ofProgramWhenDrawn(frame::setIconImages));
    }

    /** As it was left; in a low window it is folded away at first, since the fields need the room. */
    private void buildShelf() {
        shelf = new BlockShelf(canvas, labels, desk.edits(), key -> commands.run("add-" + key));
        right.add(shelf, BorderLayout.SOUTH);
        shelf.setOpen(
                place.settings().get("shelf.open").map(Boolean::valueOf).orElse(frame.getHeight() >= Pixels.of(LOW)));
        shelf.whenFolded(open -> {
            place.settings().put("shelf.open", String.valueOf(open));
            commands.refresh();
        });
    }

    private void addCommands() {
        files.addTo(commands);
        blocks.addTo(commands);
        structures.addTo(commands);
        commands.add("amount", amount::open, () -> !session.selection().isEmpty());
        commands.add("shelf", this::toShelf);
        commands.addSwitch("shelf-fold", () -> shelf.fold(shelf.isOpen()), shelf::isOpen);
        new ViewWork(session, canvas, place).addTo(commands);
        clipboard.addTo(commands);
        parts.addTo(commands);
        views.addCommands(parts::open);
        beside.addTo(commands, frame, windows::count);
        history.add();
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
            beside.problem(e.getMessage());
            return false;
        }
    }

    /** Takes over whatever is being typed anywhere in the window. */
    @Override
    public void takeOver() {
        amount.take();
        desk.takeOver();
    }

    private void changed(Change change) {
        saying.now(session.isTrying());
        if (change == Change.SELECTION) {
            forms.bringBlock();
            Selection selection = session.selection();
            selection.lead().ifPresent(id -> canvas.reveal(selection.place(), id));
        }
    }

    /** What stands round the board: the title, the line below, what commands can do. */
    private void say() {
        frame.setTitle(title());
        frame.getRootPane().putClientProperty("Window.documentModified", session.dirty());
        status.setText(Summary.of(session.plan(), texts));
        status.setToolTipText(status.getText());
        commands.refresh();
        history.name();
    }

    private String title() {
        return texts.say(session.dirty() ? "window.unsaved" : "window", Map.of("title", files.title()));
    }

    private void size() {
        frame.setName("editor");
        Geometry.least(frame, 683, 384);
        new Geometry(place.settings()).restore(frame, windows.count() - 1);
        // the board takes what it is given and asks for nothing of its own
        frame.setPreferredSize(frame.getSize());
    }

    private void lookChanged() {
        drop.on(frame.getRootPane());
        canvas.setPalette(place.theme().palette());
        frame.getRootPane().setBackground(UIManager.getColor("Panel.background"));
    }

    @Override
    public void toFront() {
        show();
        frame.toFront();
    }

    @Override
    public void show() {
        frame.setVisible(true);
        canvas.requestFocus();
    }

    public JFrame frame() {
        return frame;
    }

    @Override
    public Rectangle bounds() {
        return frame.getBounds();
    }

    @Override
    public Session session() {
        return session;
    }

    @Override
    public Workplace room() {
        return place;
    }

    public Desk desk() {
        return desk;
    }

    @Override
    public void forgetTyping() {
        desk.clear();
    }

    @Override
    public int unfinished() {
        return desk.unfinished();
    }

    public StructureWork structures() {
        return structures;
    }

    @Override
    public void bringIn(Path structure) {
        structures.bringIn(structure);
    }

    public FileWork files() {
        return files;
    }

    @Override
    public Questions questions() {
        return files.questions();
    }

    @Override
    public void open(Path file) {
        files.open(file);
    }

    @Override
    public String stem() {
        return files.stem();
    }

    /** The window of the step sheet; made when it is first wanted. */
    public SheetWindow sheet() {
        return beside.sheet();
    }

    @Override
    public SheetLook sheetLook() {
        return beside.sheetLook();
    }

    /** The window of the class that weaves this piece; made, with one loom, when it is first wanted. */
    public ClassWindow classWindow() {
        return beside.classWindow();
    }

    @Override
    public void openClass(ClassFile file, Path path, Fingerprint held) {
        beside.openClass(file, path, held);
    }

    @Override
    public void goOn(Journals.Left left, Edit edit) {
        files.takeOver(left);
        session.edit(edit);
        show();
    }

    @Override
    public void goOnClass(Journals.Left left, ClassSet unsaved) {
        show();
        beside.classWindow().goOn(left, unsaved);
    }

    /** Offers what wasn't saved when a program ended. */
    public void recover() {
        new Recovery(files, place, beside).offer();
    }

    /** Says what the program is. */
    public void about() {
        commands.run("about");
    }

    /** Opens what somebody likes to have. */
    public void settings() {
        commands.run("settings");
    }

    /** Asks somebody who has no piece yet what to begin with. */
    public void askFirst() {
        new FirstStart(files, place).ask();
    }

    @Override
    public boolean mayLeaveClass() {
        return beside.mayLeaveClass();
    }

    /** Tells a problem, where the weaver is: beside the piece or beside its sheet. */
    public void problem(String sentence) {
        beside.problem(sentence);
    }

    /** Tells that something went wrong inside the program. */
    public void fault(String sentence, String details) {
        beside.fault(sentence, details);
    }

    @Override
    public void dispose() {
        new Geometry(place.settings()).remember(frame);
        parts.remember();
        noLonger.run();
        files.closed();
        beside.dispose();
        frame.dispose();
        windows.closed(this);
    }
}

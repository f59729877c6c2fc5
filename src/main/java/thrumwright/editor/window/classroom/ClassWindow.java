package thrumwright.editor.window.classroom;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import javax.swing.JToolBar;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.form.MemberForm;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.WhenWanted;
import thrumwright.editor.loom.ShowingWindow;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.MembersView;
import thrumwright.editor.window.Bars;
import thrumwright.editor.window.JobBar;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.measure.Phrase;
import thrumwright.piece.ClassSet;
import thrumwright.sheet.ClassSheet;
import thrumwright.sheet.YarnLine;
import thrumwright.store.keeping.Journals;

/** The looms on which a class weaves a piece, in a window beside it that follows the piece. */
public final class ClassWindow {
    private static final Dimension USUAL = new Dimension(1160, 720);

    /** As many as can be read in one line. */
    private static final int MOST_TOLD = 3;

    private final MainWindow editor;
    private final ClassSession session;
    private final Texts texts;
    private final Geometry geometry;
    private final JFrame frame = new JFrame();
    private final WhenWanted<ShowingWindow> showing = new WhenWanted<>();
    private final MemberForm form;
    private final JTextArea summary = new JTextArea();
    private final MessageBar messages;
    private final JobBar jobs;
    private final Commands commands;
    private final Bars bars;
    private final ClassWork work;
    private final Runnable noLonger;

    public ClassWindow(MainWindow editor, ClassSession session) {
        this.editor = editor;
        this.session = session;
        Workplace room = editor.room();
        this.texts = room.texts();
        this.geometry = new Geometry(room.settings(), "class.window", USUAL);
        this.form = new MemberForm(session, texts);
        this.messages = new MessageBar(texts, frame.getRootPane());
        this.commands = new Commands(new CommandTexts(Locale.UK, Commands.menuKey()), Icons::of, this::takeOver);
        this.bars = new Bars(commands, texts);
        this.jobs = new JobBar(texts, commands::refresh);
        this.work = new ClassWork(editor, session, messages, form::unfinished);
        addCommands();
        build();
        session.listen(this::changed);
        noLonger = editor.session().listen(change -> {
            if (change == Change.PIECE
                    && !editor.session().piece().equals(session.set().piece())) {
                session.follow(editor.session().piece());
            }
        });
        changed();
    }

    private void addCommands() {
        work.addTo(commands);
        commands.add("class-pdf", () -> work.export(jobs, false), this::ready);
        commands.add("class-pdfs", () -> work.export(jobs, true), this::ready);
        commands.add("class-show", this::showKind);
        commands.add("class-standing", () -> work.standings(frame));
        commands.add("class-close", this::hide);
        commands.add("class-undo", session::undo, session::canUndo);
        commands.add("class-redo", session::redo, session::canRedo);
        commands.add("class-add", this::addLoom, session::canAdd);
        commands.add("class-remove", session::remove, session::canRemove);
    }

    private boolean ready() {
        return session.lost().isEmpty() && !jobs.busy();
    }

    private void showKind() {
        showing.get(() -> new ShowingWindow(editor.room(), frame.getGraphicsConfiguration()))
                .show();
    }

    private void addLoom() {
        session.add();
        form.takeKeyboard();
    }

    private void build() {
        frame.setName("class");
        frame.setIconImages(Icons.ofProgram());
        frame.setJMenuBar(menus());
        frame.add(tools(), BorderLayout.NORTH);
        frame.add(middle());
        frame.add(jobs.component(), BorderLayout.SOUTH);
        commands.bindWindow(frame.getRootPane());
        Geometry.least(frame, 683, 384);
        place();
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowActivated(WindowEvent event) {
                work.lookAgain();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                hide();
            }
        });
    }

    private JMenuBar menus() {
        JMenuBar bar = new JMenuBar();
        bar.add(bars.menu(
                "menu.file",
                "class-open",
                "class-save",
                "class-save-as",
                "class-earlier",
                null,
                "class-pdf",
                "class-pdfs",
                null,
                "class-show",
                "class-standing",
                null,
                "class-close"));
        bar.add(bars.menu("menu.edit", "class-undo", "class-redo", null, "class-add", "class-remove"));
        return bar;
    }

    private JToolBar tools() {
        JToolBar bar = new JToolBar();
        bar.setFloatable(false);
        bar.setName("classTools");
        bars.button(bar, "class-open", false);
        bars.button(bar, "class-save", false);
        bar.addSeparator();
        bars.button(bar, "class-undo", false);
        bars.button(bar, "class-redo", false);
        bar.addSeparator();
        bars.button(bar, "class-add", true);
        bars.button(bar, "class-remove", true);
        bar.add(Box.createHorizontalGlue());
        bars.button(bar, "class-pdf", true);
        bars.button(bar, "class-pdfs", true);
        return bar;
    }

    private JSplitPane middle() {
        summary.setName("classSummary");
        summary.setEditable(false);
        summary.setLineWrap(true);
        summary.setWrapStyleWord(true);
        summary.setBorder(BorderFactory.createEmptyBorder(Pixels.of(8), Pixels.of(12), Pixels.of(8), Pixels.of(12)));
        summary.getAccessibleContext().setAccessibleName(texts.say("class.summary"));
        JSplitPane left = new JSplitPane(
                JSplitPane.VERTICAL_SPLIT, new MembersView(session, texts).component(), new JScrollPane(summary));
        left.setResizeWeight(0.7);
        left.setBorder(BorderFactory.createEmptyBorder());
        JSplitPane whole = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, left, form.component());
        whole.setResizeWeight(1);
        whole.setBorder(BorderFactory.createEmptyBorder());
        form.component().setPreferredSize(Pixels.of(new Dimension(330, 400)));
        form.component().setMinimumSize(Pixels.of(new Dimension(280, 100)));
        return whole;
    }

    /** Where it was the last time; the first time at the right of the piece. */
    private void place() {
        boolean known = geometry.known();
        geometry.restore(frame, 0);
        if (!known) {
            Rectangle piece = editor.bounds();
            frame.setLocation(Math.max(0, piece.x + piece.width - frame.getWidth()), piece.y + 40);
        }
    }

    private void takeOver() {
        form.takeOver();
        editor.takeOver();
    }

    private void changed() {
        ClassSheet sheet = ClassSheet.of(session.plan(), Locale.UK);
        String key = session.dirty() ? "class.window.unsaved" : "class.window";
        frame.setTitle(texts.say(key, Map.of("title", sheet.title())));
        frame.getRootPane().putClientProperty("Window.documentModified", session.dirty());
        String text = told(sheet);
        if (!text.equals(summary.getText())) {
            summary.setText(text);
            summary.setCaretPosition(0);
        }
        commands.refresh();
    }

    /** What is the matter, then what the class takes. */
    private String told(ClassSheet sheet) {
        List<String> lines = new ArrayList<>();
        session.lost().ifPresent(why -> lines.add(texts.say("class.lost", Map.of("why", why))));
        lines.addAll(sheet.findings());
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add(texts.say("class.takes"));
        sheet.shopping().stream().map(YarnLine::text).forEach(lines::add);
        return String.join("\n", lines);
    }

    public void show() {
        frame.setVisible(true);
        frame.setExtendedState(frame.getExtendedState() & ~JFrame.ICONIFIED);
        frame.toFront();
        form.takeKeyboard();
    }

    /** Goes on with what wasn't saved when a program ended. */
    public void goOn(Journals.Left left, ClassSet unsaved) {
        work.takeOver(left);
        session.edit(saved -> unsaved, null);
        session.follow(editor.session().piece());
        show();
    }

    private void hide() {
        form.takeOver();
        jobs.stop();
        geometry.remember(frame);
        messages.clear();
        frame.setVisible(false);
    }

    /** Ends everything that belongs to this window. */
    public void dispose() {
        if (frame.isShowing()) {
            hide();
        }
        noLonger.run();
        showing.made().ifPresent(ShowingWindow::dispose);
        work.closed();
        frame.dispose();
    }

    public ClassSession session() {
        return session;
    }

    public ClassWork work() {
        return work;
    }

    public JFrame frame() {
        return frame;
    }

    JobBar jobs() {
        return jobs;
    }

    public void problem(String sentence) {
        messages.problem(sentence);
    }

    /** Tells which fields of a file say nothing. */
    public void tellUnknown(List<Phrase> notices) {
        if (!notices.isEmpty()) {
            problem(notices.stream().limit(MOST_TOLD).map(Phrase::toString).collect(Collectors.joining(" ")));
        }
    }
}

package thrumwright.editor.window.sheet;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Future;
import javax.swing.JFrame;
import javax.swing.Timer;
import thrumwright.editor.edit.Change;
import thrumwright.editor.files.SheetTarget;
import thrumwright.editor.form.PageForm;
import thrumwright.editor.look.Icons;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.settings.Geometry;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.sheet.PageView;
import thrumwright.editor.sheet.PageZoom;
import thrumwright.editor.sheet.SheetMade;
import thrumwright.editor.sheet.SheetMaker;
import thrumwright.editor.sheet.SheetSetup;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.editor.window.JobBar;
import thrumwright.editor.window.MainWindow;
import thrumwright.editor.window.MessageBar;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetLook;
import thrumwright.output.SheetSection;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;

/**
 * The step sheet of a piece in a window of its own, so that it can lie beside the piece and follow it: the pages that
 * print, how they are set up, and what can be done with them.
 */
public final class SheetWindow {
    /** So long after an edit the sheet is laid out again, ms; more edits in that time are one. */
    private static final int FOLLOWS_AFTER = 120;

    private static final Dimension USUAL = new Dimension(980, 860);

    private final MainWindow editor;
    private final Texts texts;
    private final SheetSettings remembered;
    private final Geometry geometry;
    private final SheetSetup setup;
    private final JFrame frame = new JFrame();
    private final PageView view;
    private final PageForm form;
    private final MessageBar messages;
    private final JobBar jobs;
    private final SheetMaker maker;
    private final SheetExport export;
    private final SheetPrint print;
    private final Commands commands;
    private final Timer follow = new Timer(FOLLOWS_AFTER, event -> layOut());
    private final Runnable noLonger;
    private SheetBar bar;
    private boolean stale = true;

    public SheetWindow(MainWindow editor) {
        this.editor = editor;
        Workplace room = editor.room();
        this.texts = room.texts();
        this.remembered = new SheetSettings(
                room.settings(),
                Locale.getDefault(),
                editor.session().piece().habits().units());
        this.geometry = new Geometry(room.settings(), "sheet.window", USUAL);
        this.setup = new SheetSetup(remembered.choice());
        this.view = new PageView(texts);
        this.form = new PageForm(
                setup, texts, () -> editor.session().piece().habits().units());
        this.messages = new MessageBar(texts, frame.getRootPane());
        this.commands = new Commands(new CommandTexts(Locale.UK, Commands.menuKey()), Icons::of, this::takeOver);
        this.jobs = new JobBar(texts, commands::refresh);
        this.maker = new SheetMaker(room.fonts(), Locale.UK, this::laidOut);
        this.export = new SheetExport(texts, room.fonts(), jobs, messages);
        this.print = new SheetPrint(texts, jobs, messages, new SystemPrinters(texts, frame));
        follow.setRepeats(false);
        addCommands();
        build();
        setup.listen(this::changed);
        noLonger = editor.session().listen(change -> {
            if (change == Change.PIECE) {
                changed();
            }
            title();
        });
    }

    private void addCommands() {
        commands.add("sheet-print", () -> print.print(asItIsNow()), this::free);
        commands.add("sheet-export", () -> export.whenMade(asItIsNow(), this::export), this::free);
        commands.add("sheet-close", this::hide);
        addZooms();
        commands.add("sheet-before", () -> view.goTo(view.current() - 1), () -> view.current() > 0);
        commands.add("sheet-next", () -> view.goTo(view.current() + 1), () -> view.current() < view.count() - 1);
        commands.add("sheet-first", () -> view.goTo(0), () -> view.current() > 0);
        commands.add("sheet-last", () -> view.goTo(view.count() - 1), () -> view.current() < view.count() - 1);
    }

    private void addZooms() {
        commands.add("sheet-closer", () -> view.setZoom(PageZoom.from(view.scale(), 1)));
        commands.add("sheet-farther", () -> view.setZoom(PageZoom.from(view.scale(), -1)));
        commands.add("sheet-whole", () -> view.setZoom(PageZoom.fitting(PageZoom.Kind.WHOLE)));
        commands.add("sheet-width", () -> view.setZoom(PageZoom.fitting(PageZoom.Kind.WIDTH)));
        commands.add("sheet-true-size", () -> view.setZoom(trueSize()));
    }

    /** As far as this screen was measured. */
    private PageZoom trueSize() {
        double pixels = new ScreenScale(editor.room().settings()).of(view.getGraphicsConfiguration());
        return PageZoom.of(pixels / Paper.POINTS);
    }

    private void build() {
        frame.setName("sheet");
        frame.setIconImages(Icons.ofProgram());
        bar = new SheetBar(commands, texts);
        frame.setJMenuBar(bar.menus());
        frame.add(bar.tools(), BorderLayout.NORTH);
        frame.add(view.component());
        form.component().setPreferredSize(Pixels.of(new Dimension(280, 300)));
        frame.add(form.component(), BorderLayout.EAST);
        frame.add(jobs.component(), BorderLayout.SOUTH);
        commands.bindWindow(frame.getRootPane());
        view.listen(this::looked);
        Geometry.least(frame, 683, 384);
        place();
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                hide();
            }
        });
        title();
        looked();
    }

    /** Where it was the last time; the first time at the right of the piece, so that its picture is still seen. */
    private void place() {
        boolean known = geometry.known();
        geometry.restore(frame, 0);
        if (!known) {
            Rectangle piece = editor.bounds();
            frame.setLocation(Math.max(0, piece.x + piece.width - frame.getWidth()), piece.y);
        }
    }

    private boolean free() {
        return !jobs.busy();
    }

    /** The pages of the piece as it is and as they are set up at this moment, whether they are shown already or not. */
    private Future<SheetPages> asItIsNow() {
        follow.stop();
        layOut();
        return maker.needed();
    }

    private void takeOver() {
        form.takeOver();
        editor.takeOver();
    }

    private void title() {
        String title = editor.session().piece().title();
        frame.setTitle(texts.say("sheet.window", Map.of("title", title.isBlank() ? texts.say("untitled") : title)));
    }

    private void looked() {
        bar.say(view.where());
        commands.refresh();
    }

    /** The piece or the setup is another; the sheet follows, unless nobody sees it. */
    private void changed() {
        stale = true;
        if (frame.isShowing()) {
            follow.restart();
        }
    }

    private void layOut() {
        if (stale) {
            stale = false;
            maker.want(editor.session().plan(), setup.choice().look());
        }
    }

    private void laidOut(SheetMade made) {
        view.show(made.pages());
        form.count(made.counts());
        looked();
    }

    /** Shows the sheet as it is now. */
    public void show() {
        layOut();
        frame.setVisible(true);
        frame.setExtendedState(frame.getExtendedState() & ~JFrame.ICONIFIED);
        frame.toFront();
        view.requestFocusInWindow();
    }

    /** Shows the sheet and runs one of its commands. */
    public void showAnd(String command) {
        show();
        commands.run(command);
    }

    private void export(SheetPages pages) {
        String name = editor.stem() + "-" + texts.say("files.sheet.suffix");
        editor.questions().sheetFile(name, remembered.form(), pages.count()).ifPresent(target -> {
            remembered.remember(target.form());
            remembered.remember(setup.choice());
            export.write(editor.session().plan(), setup.choice().look(), target);
        });
    }

    /** Writes the cards that hang by the loom, and nothing else, as a PDF. */
    public void cards() {
        show();
        String name = editor.stem() + "-" + texts.say("files.cards.suffix");
        editor.questions().fileToSave(name, SheetForm.PDF.ending()).ifPresent(path -> {
            SheetLook look = setup.choice().with(Set.of(SheetSection.CARDS)).look();
            export.write(editor.session().plan(), look, new SheetTarget(path, SheetForm.PDF));
        });
    }

    private void hide() {
        form.takeOver();
        jobs.stop();
        geometry.remember(frame);
        remembered.remember(setup.choice());
        messages.clear();
        frame.setVisible(false);
    }

    /** Ends everything that belongs to this window. */
    public void dispose() {
        if (frame.isShowing()) {
            hide();
        }
        noLonger.run();
        follow.stop();
        maker.close();
        view.close();
        frame.dispose();
    }

    public void problem(String sentence) {
        messages.problem(sentence);
    }

    public JFrame frame() {
        return frame;
    }

    public SheetSetup setup() {
        return setup;
    }

    public PageView view() {
        return view;
    }

    public SheetPrint printing() {
        return print;
    }

    public JobBar jobs() {
        return jobs;
    }
}

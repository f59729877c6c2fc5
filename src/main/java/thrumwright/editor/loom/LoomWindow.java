package thrumwright.editor.loom;

import java.awt.BorderLayout;
import java.awt.GraphicsConfiguration;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.time.LocalDateTime;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.form.Desk;
import thrumwright.editor.form.MeasuredDialog;
import thrumwright.editor.look.Icons;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrases;

/**
 * The view at the loom in a window that fills the screen. It works on the same session as the piece's own window, so that
 * both agree and what is done can be taken back in either.
 */
public final class LoomWindow {
    private final Workplace room;
    private final JFrame frame = new JFrame();
    private final GraphicsConfiguration screen;
    private final Stillness stillness;
    private final Speech speech;
    private final Desk desk;
    private final Weaving weaving;
    private final AtHand hand;
    private final LoomView view;
    private final Commands commands;
    private final LoomBar bar;
    private final Runnable noLonger;

    /**
     * @param screen that it fills
     * @param clock what time it is where the weaver works
     */
    public LoomWindow(Session session, Workplace room, GraphicsConfiguration screen, Supplier<LocalDateTime> clock) {
        this.room = room;
        this.screen = screen;
        this.stillness = new Stillness(room.settings());
        Texts texts = room.texts();
        this.speech = new Speech(room.settings(), Voice.ofSystem());
        this.desk = new Desk(session, new Edits(texts.phrases(), texts.words()), texts);
        this.weaving = new Weaving(session, texts, clock);
        this.hand = new AtHand(weaving, Phrases.of("thrumwright.sheet.loom", texts.locale()));
        this.view = new LoomView(hand, this::type, () -> room.theme().palette(), stillness.moving());
        this.commands = new Commands(new CommandTexts(texts.locale(), Commands.menuKey()), Icons::of, () -> {});
        addCommands();
        this.bar = new LoomBar(commands, pixels());
        build(texts);
        Runnable deaf = session.listen(change -> {
            if (change == Change.PIECE) {
                changed();
            }
        });
        Runnable blind = room.whenLookChanges(this::changed);
        this.noLonger = () -> {
            deaf.run();
            blind.run();
        };
        changed();
    }

    private void addCommands() {
        commands.add(
                "loom-done", () -> turn(weaving::forward), () -> weaving.now().isPresent());
        commands.add("loom-back", () -> turn(weaving::back));
        commands.addSwitch("loom-move", this::stopOrGo, () -> view.pace().going());
        commands.add("loom-slower", () -> view.setPace(Pace::slower));
        commands.add("loom-faster", () -> view.setPace(Pace::faster));
        commands.add("loom-crossing", view::cross);
        commands.add("loom-measure", this::measure, () -> weaving.measurable().isPresent());
        commands.addSwitch("loom-speak", this::speakOrNot, speech::wanted, speech::possible);
        commands.add("loom-close", this::hide);
    }

    /** A leaf is turned without anything changing in the piece. */
    private void turn(IntConsumer way) {
        way.accept(hand.count());
        changed();
    }

    private void stopOrGo() {
        view.setPace(Pace::turned);
        stillness.choose(view.pace().going());
    }

    private void measure() {
        weaving.measurable()
                .ifPresent(step -> new MeasuredDialog(
                                frame, desk, step.step().key(), step.title(), (float) (LoomBar.TYPE * pixels()), (int)
                                        Math.ceil(LoomBar.TARGET * pixels()))
                        .ask());
    }

    private void speakOrNot() {
        speech.choose(!speech.wanted());
        speech.say(view.words());
    }

    private void build(Texts texts) {
        frame.setName("loomWindow");
        frame.setTitle(texts.say("loom.title"));
        frame.setUndecorated(true);
        frame.setBounds(screen.getBounds());
        frame.add(view);
        frame.add(bar.component(), BorderLayout.SOUTH);
        commands.bindWindow(frame.getRootPane());
        frame.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                changed();
            }
        });
    }

    private double pixels() {
        return new ScreenScale(room.settings()).of(screen);
    }

    private LoomType type() {
        return new LoomType(room.fonts(), pixels(), 1);
    }

    private void changed() {
        view.refresh();
        bar.showMotion(hand.moves(), frame.getWidth());
        if (frame.isVisible()) {
            speech.say(view.words());
        }
        commands.refresh();
    }

    public JFrame frame() {
        return frame;
    }

    /** What is shown, to be read by whoever can't see it. */
    public JComponent component() {
        return view;
    }

    public void show() {
        frame.setVisible(true);
        frame.toFront();
        changed();
    }

    private void hide() {
        speech.stop();
        frame.setVisible(false);
    }

    public void dispose() {
        noLonger.run();
        speech.stop();
        frame.dispose();
    }
}

package thrumwright.editor.loom;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.GraphicsConfiguration;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JPanel;
import thrumwright.block.Block;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.look.Icons;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Commands;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrases;
import thrumwright.measure.UnitSystem;

/** Shows any kind of block to a class on a whole screen, on a warp of its own: nothing of anybody's piece is seen. */
public final class ShowingWindow {
    private final Workplace room;
    private final JFrame frame = new JFrame();
    private final GraphicsConfiguration screen;
    private final List<Block> all = NewBlocks.all(UnitSystem.METRIC);
    private final JComboBox<String> kinds = new JComboBox<>();
    private final ShowingView view;
    private final Commands commands;
    private final Runnable noLonger;

    /** @param screen that it fills */
    public ShowingWindow(Workplace room, GraphicsConfiguration screen) {
        this.room = room;
        this.screen = screen;
        Texts texts = room.texts();
        all.forEach(block -> kinds.addItem(texts.words().kind(block)));
        this.view = new ShowingView(
                ShownKind.of(all.get(0)),
                this::type,
                () -> room.theme().palette(),
                Phrases.of("thrumwright.sheet.steps", texts.locale()),
                new Stillness(room.settings()).moving());
        this.commands = new Commands(new CommandTexts(texts.locale(), Commands.menuKey()), Icons::of, () -> {});
        addCommands();
        build(texts);
        this.noLonger = room.whenLookChanges(view::repaint);
    }

    private void addCommands() {
        commands.addSwitch(
                "loom-move",
                () -> pace(Pace::turned),
                () -> view.motion().pace().going());
        commands.add("loom-slower", () -> pace(Pace::slower));
        commands.add("loom-faster", () -> pace(Pace::faster));
        commands.add("loom-close", this::hide);
    }

    private void pace(UnaryOperator<Pace> change) {
        view.motion().set(change);
        view.repaint();
    }

    private void build(Texts texts) {
        frame.setName("showing");
        frame.setTitle(texts.say("showing.title"));
        frame.setUndecorated(true);
        frame.setBounds(screen.getBounds());
        kinds.setName("showing.kind");
        kinds.getAccessibleContext().setAccessibleName(texts.say("showing.kind"));
        kinds.setFont(kinds.getFont().deriveFont((float) (LoomBar.TYPE * pixels())));
        kinds.setMaximumRowCount(kinds.getItemCount());
        kinds.addActionListener(event -> chosen(texts));
        int gap = (int) Math.round(2 * pixels());
        JPanel head = new JPanel(new FlowLayout(FlowLayout.LEADING, gap, gap));
        head.add(LoomBar.large(kinds, 1, pixels()));
        JPanel foot = new JPanel(new FlowLayout(FlowLayout.CENTER, gap, 0));
        foot.setBorder(BorderFactory.createEmptyBorder(gap, gap, gap, gap));
        for (String id : new String[] {"loom-slower", "loom-move", "loom-faster", "loom-close"}) {
            foot.add(LoomBar.button(commands, id, 1, pixels()));
        }
        frame.add(head, BorderLayout.NORTH);
        frame.add(view);
        frame.add(foot, BorderLayout.SOUTH);
        commands.bindWindow(frame.getRootPane());
        chosen(texts);
    }

    private void chosen(Texts texts) {
        view.show(ShownKind.of(all.get(kinds.getSelectedIndex())));
        view.getAccessibleContext()
                .setAccessibleName(texts.say(
                        view.shown().slip().isPresent() ? "showing.both" : "showing.one",
                        Map.of("kind", kinds.getSelectedItem())));
    }

    private double pixels() {
        return new ScreenScale(room.settings()).of(screen);
    }

    private LoomType type() {
        return new LoomType(room.fonts(), pixels(), 1);
    }

    public JFrame frame() {
        return frame;
    }

    public void show() {
        frame.setVisible(true);
        frame.toFront();
        kinds.requestFocusInWindow();
    }

    private void hide() {
        frame.setVisible(false);
    }

    public void dispose() {
        noLonger.run();
        frame.dispose();
    }
}

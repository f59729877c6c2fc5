package thrumwright.editor.view;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import thrumwright.drawing.Palette;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Column;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Texts;
import thrumwright.plan.comparison.EndComparison;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.words.ComparisonWords;

/** Both ends side by side: how the top differs from the start, and whether they look alike when finished. */
public final class EndsView {
    private final Session session;
    private final Edits edits;
    private final Texts texts;
    private final Function<String, Action> commands;
    private final Column column =
            new Column(new MigLayout("insets 8 12 8 12, wrap 2, fillx, hidemode 3", "[]8[grow, fill]"));
    private final JScrollPane scroll = Column.scrolling(column);
    private final EndsPicture picture;
    private boolean onButton;
    private Optional<String> onPair = Optional.empty();

    /** @param commands finds a command by its id */
    public EndsView(
            Session session, Edits edits, Texts texts, Supplier<Palette> palette, Function<String, Action> commands) {
        this.session = session;
        this.edits = edits;
        this.texts = texts;
        this.commands = commands;
        this.picture = new EndsPicture(session, texts, palette);
        column.setName("ends");
        LiveView.keep(session, scroll, this::note, this::refresh, picture::mark);
    }

    public JComponent component() {
        return scroll;
    }

    /** Who has the keyboard; the button is about to lose it, since its command can't be done any more. */
    private void note() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        onButton = owner != null && owner.getParent() == column;
        onPair = picture.focused();
    }

    private void refresh() {
        column.removeAll();
        EndComparison comparison = EndComparison.of(session.plan());
        ComparisonWords words =
                new ComparisonWords(texts.locale(), session.shown().shown());
        for (String sentence : words.front(comparison)) {
            column.add(
                    new UnheardPicture(comparison.alike() ? Tick.ICON : new Mark(Severity.CAUTION)),
                    "aligny top, gaptop 1");
            column.add(new Prose(sentence), "wmin 60");
        }
        JButton button = command();
        column.add(button, "span 2, growx 0, wmin 0, gaptop 4");
        String lost = edits.lostByFollowing(session.shown());
        if (!lost.isEmpty()) {
            column.add(new Prose(texts.say("ends.lost", Map.of("lost", lost))), "span 2, growx, wmin 60");
        }
        String regained = edits.regainedByFollowing(session.shown());
        if (!regained.isEmpty()) {
            column.add(new Prose(texts.say("ends.regained", Map.of("regained", regained))), "span 2, growx, wmin 60");
        }
        column.add(picture, "span 2, growx, gaptop 8, wmin 0");
        picture.show(comparison, words);
        column.revalidate();
        column.repaint();
        if (onButton) {
            button.requestFocusInWindow();
        }
        onPair.ifPresent(picture::focus);
        onButton = false;
        onPair = Optional.empty();
    }

    /** Parts the ends, or lets the top follow again, whichever can be done. */
    private JButton command() {
        String id = session.shown().topFollows() ? "top-own" : "top-follows";
        JButton button = new JButton(commands.apply(id));
        button.setName("ends." + id);
        return button;
    }
}

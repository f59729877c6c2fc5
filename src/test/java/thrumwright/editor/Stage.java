package thrumwright.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import thrumwright.block.Block;
import thrumwright.block.HemFold;
import thrumwright.block.Soumak;
import thrumwright.block.Support;
import thrumwright.block.Turning;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Theme;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.window.piece.EditorWindow;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.End;
import thrumwright.piece.Label;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Portion;
import thrumwright.piece.Stripes;
import thrumwright.piece.Top;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.store.keeping.Keeping;
import thrumwright.testing.WindowTest;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Yarn;

/**
 * The window brought into every state that it has: each view, each form, the form of each kind of block. What is new
 * there is met without another line here.
 */
final class Stage {
    private static final String BUNDLE = "bundle";

    private final FrameFixture frame;
    private Workroom room;
    private EditorWindow editor;

    private Stage(WindowTest window, Locale locale, Piece piece) {
        frame = window.show(() -> {
            room = new Workroom(new Settings(Optional.empty()), Rooms.LIBRARY, locale, Keeping.nowhere());
            editor = room.open(new Session(new PieceFile(piece, Unknown.none()), Optional.empty()));
            return editor.frame();
        });
        run(() -> robot().finder()
                .findByName(frame.target(), "views.fold", AbstractButton.class)
                .doClick(0));
    }

    static Stage open(WindowTest window, Locale locale, Piece piece) {
        return new Stage(window, locale, piece);
    }

    /** A demo piece. */
    static Piece demo(String name) {
        try {
            return PieceFile.read(BuiltIn.DEMO.text(name + ".json")).piece();
        } catch (FileProblem e) {
            throw new AssertionError(e);
        }
    }

    /**
     * A piece whose start has one block of every kind, and whose top is its mirror on its own. It is narrow: the window
     * around it is the same, and its cloth is painted in a fraction of the time.
     */
    static Piece ofAllKinds() {
        List<Block> blocks =
                NewBlocks.all(UnitSystem.METRIC).stream().map(Stage::wide).toList();
        EdgeCord cord = new EdgeCord(EdgeCord.Along.ALL_ROUND, Length.parse("4 mm"), true);
        Destiny destiny = Destiny.UNSAID
                .withMadeFor(Optional.of(MadeFor.MOUNTED))
                .withCord(Optional.of(cord))
                .withLabel(Optional.of(new Label("Reed Room", "2026")));
        Piece panel = demo("saltmarsh-panel").withDestiny(destiny);
        Piece piece = panel.withWarp(panel.warp().withWidth(Length.parse("6 cm")))
                .withStart(new End(blocks))
                .withTop(Top.FollowsStart.withoutOrderingCords(new End(blocks)));
        return wound(piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP))));
    }

    /** With a yarn more, of strands of two others, and what the design is told to have. */
    private static Piece wound(Piece piece) {
        List<Yarn> yarns = new ArrayList<>(piece.yarns());
        yarns.add(Yarn.wound(
                BUNDLE,
                "Tide and mud",
                new Bundle(List.of(new Strands(piece.yarn("tide"), 3), new Strands(piece.yarn("mud"), 2)))));
        Stripes stripes = new Stripes(
                Optional.of(Portion.parse("25 %")), List.of(new Stripes.Stripe("mud", Portion.parse("10 %"))));
        return piece.withYarns(yarns).withDesign(piece.design().withStripes(stripes));
    }

    /** Soumak that leaves a choice for every of its numbers, and a fold with everything that it can have. */
    private static Block wide(Block block) {
        if (block instanceof HemFold fold) {
            return new HemFold(
                    fold.tag(),
                    new Turning.Faced(Length.parse("30 mm"), Optional.empty()),
                    Optional.of(new Support.Slat(Length.parse("24 mm"), Length.parse("6 mm"))));
        }
        return block instanceof Soumak soumak
                ? new Soumak(soumak.tag(), soumak.use(), soumak.rows(), 5, 2, soumak.first(), soumak.countered())
                : block;
    }

    EditorWindow editor() {
        return editor;
    }

    Session session() {
        return editor.session();
    }

    FrameFixture frame() {
        return frame;
    }

    Robot robot() {
        return frame.robot();
    }

    <T> T ask(Callable<T> question) {
        return GuiActionRunner.execute(question);
    }

    /** On the event thread, and whatever follows from it there. */
    void run(Runnable work) {
        GuiActionRunner.execute(work::run);
        for (int i = 0; i < 3; i++) {
            GuiActionRunner.execute(() -> {});
        }
    }

    /** Sentences that wrap take their height only once they have their width. */
    void settle() {
        for (int i = 0; i < 6; i++) {
            run(() -> editor.frame().validate());
        }
    }

    void theme(Theme theme) {
        run(() -> room.place().setTheme(theme));
    }

    /** @param width of the whole window, or as much more as it needs at least */
    void size(int width, int height) {
        run(() -> {
            Dimension least = editor.frame().getMinimumSize();
            editor.frame().setSize(Math.max(width, least.width), Math.max(height, least.height));
        });
    }

    private JTabbedPane tabs(String name) {
        return robot().finder().findByName(frame.target(), name, JTabbedPane.class);
    }

    /** Goes through all views; the state's name is the view's title. */
    void eachView(java.util.function.Consumer<String> state) {
        eachTab("views", state);
    }

    /** Goes through all forms, and for the block's form through every kind of block. */
    void eachForm(java.util.function.Consumer<String> state) {
        eachTab("forms", state);
        for (Block block : ask(() -> session().piece().start().blocks())) {
            select(Place.START, block.id());
            state.accept("form of " + block.key());
        }
        if (chooseBundle()) {
            state.accept("form of a yarn of several strands");
        }
    }

    /** Whether the piece has one; it is chosen among the yarns then. */
    private boolean chooseBundle() {
        List<Yarn> yarns = ask(() -> session().piece().yarns());
        int at = yarns.stream().map(Yarn::id).toList().indexOf(BUNDLE);
        if (at < 0) {
            return false;
        }
        JTabbedPane tabs = tabs("forms");
        for (int i = 0; i < ask(tabs::getTabCount); i++) {
            int tab = i;
            run(() -> tabs.setSelectedIndex(tab));
            List<JList> lists = ask(() -> all(form(), JList.class, list -> "yarns".equals(list.getName())));
            if (!lists.isEmpty()) {
                run(() -> lists.get(0).setSelectedIndex(at));
                return true;
            }
        }
        return false;
    }

    private void eachTab(String name, java.util.function.Consumer<String> state) {
        JTabbedPane tabs = tabs(name);
        for (int i = 0; i < ask(tabs::getTabCount); i++) {
            int at = i;
            run(() -> tabs.setSelectedIndex(at));
            state.accept(name + " “" + ask(() -> tabs.getTitleAt(at)) + "”");
        }
    }

    void select(Place place, String id) {
        run(() -> {
            session().select(Selection.none());
            session().select(Selection.of(place, id));
        });
    }

    /** The view that is showing. For the event thread. */
    Component view() {
        return tabs("views").getSelectedComponent();
    }

    /** All that stands around the form that is showing. For the event thread. */
    Component forms() {
        return tabs("forms");
    }

    /** The form that is showing. */
    JComponent form() {
        return (JComponent) ask(() -> tabs("forms").getSelectedComponent());
    }

    /** Everything in a component that meets a condition, itself too, as far as it shows. */
    static <C extends Component> List<C> all(Component root, Class<C> kind, Predicate<C> wanted) {
        List<C> found = new ArrayList<>();
        collect(root, kind, wanted, found);
        return found;
    }

    private static <C extends Component> void collect(
            Component root, Class<C> kind, Predicate<C> wanted, List<C> into) {
        if (!root.isVisible()) {
            return;
        }
        if (kind.isInstance(root) && wanted.test(kind.cast(root))) {
            into.add(kind.cast(root));
        }
        if (root instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(child, kind, wanted, into);
            }
        }
    }
}

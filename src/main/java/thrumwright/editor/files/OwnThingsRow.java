package thrumwright.editor.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.form.Choice;
import thrumwright.editor.form.ChoiceBox;
import thrumwright.editor.form.YarnShelf;
import thrumwright.editor.look.LoomIcon;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Stash;
import thrumwright.yarn.Yarn;

/** Asks for loom, warp and weft of a new piece, those of the last one first. */
final class OwnThingsRow {
    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 0, fillx, novisualpadding", "[]6[sg, grow, fill]16[]6[sg, grow, fill]16[]6[sg, grow, fill]"));
    private final ChoiceBox<Frame> loom = new ChoiceBox<>();
    private final JLabel picture = new JLabel();
    private final Prose about = new Prose("").in("Thrumwright.quiet");
    private final ChoiceBox<Optional<Yarn>> warp = new ChoiceBox<>();
    private final ChoiceBox<Optional<Yarn>> weft = new ChoiceBox<>();

    /**
     * What can be chosen as a loom.
     *
     * @param own one of the weaver's; empty: one as is usual of its kind
     */
    private record Frame(Optional<Loom> own, LoomKind kind) {}

    /** @param usual a new piece as it is usual, whose loom may be of any kind */
    OwnThingsRow(Stash stash, Piece usual, Texts texts) {
        this.texts = texts;
        looms(stash, usual);
        YarnShelf shelf = new YarnShelf(stash, texts);
        List<Choice<Yarn>> yarns = new ArrayList<>(shelf.own());
        yarns.addAll(shelf.trade());
        fill("begin.warp", warp, yarns);
        fill("begin.weft", weft, yarns);
        picture.setName("begin.kind");
        about.setName("begin.kind.about");
        loom.addActionListener(event -> showKind());
        showKind();
    }

    /** The weaver's own, the last one first, then one of each kind. */
    private void looms(Stash stash, Piece usual) {
        stash.looms()
                .forEach(each -> loom.addItem(new Choice<>(
                        new Frame(Optional.of(each), each.kind()), named(each), LoomIcon.small(each.kind()))));
        for (LoomKind kind : LoomKinds.all(usual)) {
            String name = texts.say("loom-kind." + kind.key());
            String said = usual.loom().kind().key().equals(kind.key())
                    ? texts.say("begin.loom.usual", Map.of("kind", name))
                    : name;
            loom.addItem(new Choice<>(new Frame(Optional.empty(), kind), said, LoomIcon.small(kind)));
        }
        add("begin.loom", loom);
    }

    private String named(Loom each) {
        String key = each.name().isBlank() ? "loom.unnamed" : "loom.named";
        return texts.say(key, Map.of("name", each.name(), "open", each.open()));
    }

    private void showKind() {
        LoomKind kind = loom.getItemAt(loom.getSelectedIndex()).value().kind();
        picture.setIcon(new LoomIcon(kind, 60, 38));
        picture.getAccessibleContext().setAccessibleName(texts.say("loom-kind." + kind.key()));
        about.setText(texts.say("begin.kind." + kind.key()));
    }

    private <V> void fill(String key, ChoiceBox<Optional<V>> box, List<Choice<V>> choices) {
        box.addItem(Choice.of(Optional.empty(), texts.say("begin.usual")));
        choices.forEach(each -> box.addItem(new Choice<>(Optional.of(each.value()), each.text(), each.icon())));
        add(key, box);
    }

    private void add(String key, ChoiceBox<?> box) {
        box.setName(key);
        box.setToolTipText(texts.say(key + ".tip"));
        JLabel label = new JLabel(texts.say(key));
        label.setLabelFor(box);
        panel.add(label);
        panel.add(box, "wmin 60");
    }

    JComponent component() {
        return panel;
    }

    /** The chosen kind of loom, drawn. */
    JComponent picture() {
        return picture;
    }

    /** What the chosen kind of loom is. */
    JComponent about() {
        return about;
    }

    OwnThings chosen() {
        Frame frame = loom.getItemAt(loom.getSelectedIndex()).value();
        return new OwnThings(frame.own(), Optional.of(frame.kind().key()), chosen(warp), chosen(weft));
    }

    private static <V> Optional<V> chosen(ChoiceBox<Optional<V>> box) {
        return box.getItemAt(box.getSelectedIndex()).value();
    }
}

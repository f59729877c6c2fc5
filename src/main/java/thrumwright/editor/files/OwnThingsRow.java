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
import thrumwright.editor.text.Texts;
import thrumwright.piece.Loom;
import thrumwright.piece.Stash;
import thrumwright.yarn.Yarn;

/** Asks for loom, warp and weft of a new piece, those of the last one first. */
final class OwnThingsRow {
    private final Texts texts;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 0, fillx, novisualpadding", "[]6[sg, grow, fill]16[]6[sg, grow, fill]16[]6[sg, grow, fill]"));
    private final ChoiceBox<Optional<Loom>> loom = new ChoiceBox<>();
    private final ChoiceBox<Optional<Yarn>> warp = new ChoiceBox<>();
    private final ChoiceBox<Optional<Yarn>> weft = new ChoiceBox<>();

    OwnThingsRow(Stash stash, Texts texts) {
        this.texts = texts;
        fill("begin.loom", loom, stash.looms().stream().map(this::named).toList());
        YarnShelf shelf = new YarnShelf(stash, texts);
        List<Choice<Yarn>> yarns = new ArrayList<>(shelf.own());
        yarns.addAll(shelf.trade());
        fill("begin.warp", warp, yarns);
        fill("begin.weft", weft, yarns);
        if (!stash.looms().isEmpty()) {
            loom.setSelectedIndex(1);
        }
    }

    private Choice<Loom> named(Loom each) {
        String key = each.name().isBlank() ? "loom.unnamed" : "loom.named";
        return Choice.of(each, texts.say(key, Map.of("name", each.name(), "open", each.open())));
    }

    private <V> void fill(String key, ChoiceBox<Optional<V>> box, List<Choice<V>> choices) {
        box.setName(key);
        box.addItem(Choice.of(Optional.empty(), texts.say("begin.usual")));
        choices.forEach(each -> box.addItem(new Choice<>(Optional.of(each.value()), each.text(), each.icon())));
        box.setToolTipText(texts.say(key + ".tip"));
        JLabel label = new JLabel(texts.say(key));
        label.setLabelFor(box);
        panel.add(label);
        panel.add(box, "wmin 60");
    }

    JComponent component() {
        return panel;
    }

    OwnThings chosen() {
        return new OwnThings(chosen(loom), chosen(warp), chosen(weft));
    }

    private static <V> Optional<V> chosen(ChoiceBox<Optional<V>> box) {
        return box.getItemAt(box.getSelectedIndex()).value();
    }
}

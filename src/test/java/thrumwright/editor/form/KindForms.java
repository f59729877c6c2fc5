package thrumwright.editor.form;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.End;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

/** Forms of blocks, made without a window. */
public final class KindForms {
    private KindForms() {}

    /** The names of a block's fields, such as {@code block.group}, without those of its label and its own words. */
    public static List<String> fieldsOf(Block block) {
        Session session = new Session(
                new PieceFile(Pieces.panel().withStart(new End(List.of(block))), Unknown.none()), Optional.empty());
        Texts texts = Texts.of(Locale.UK);
        Desk desk = new Desk(session, new Edits(texts.phrases(), texts.words()), texts);
        session.select(Selection.of(Place.START, block.id()));
        List<String> names = new ArrayList<>();
        addNames(BlockForm.of(desk).whole(), names);
        names.removeAll(List.of("block.label", "block.words", "block.repeat"));
        return names;
    }

    private static void addNames(Container container, List<String> names) {
        for (Component component : container.getComponents()) {
            if (component.getName() != null
                    && component.getName().startsWith("field.")
                    && !component.getName().endsWith(".reason")) {
                names.add(component.getName().substring("field.".length()));
            }
            if (component instanceof Container inside) {
                addNames(inside, names);
            }
        }
    }
}

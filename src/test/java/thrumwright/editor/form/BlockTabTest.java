package thrumwright.editor.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JScrollPane;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import thrumwright.block.Block;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;

/** The fields of another block are made in parts, and nobody sees or fills in half a form. */
class BlockTabTest {
    private final Session session = new Session(new PieceFile(Pieces.panel(), Unknown.none()), Optional.empty());
    private final List<Block> blocks = session.piece().start().blocks();
    private final Texts texts = Texts.of(Locale.UK);
    private final Desk desk = new Desk(session, new Edits(texts.phrases(), texts.words()), texts);
    private final BlockTab tab = new BlockTab(desk);

    /** By an event of its own, which comes after all that are on their way. */
    private static <T> T event(Supplier<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked::get);
        EventQueue.invokeAndWait(task);
        return task.get();
    }

    private void show(Block block) {
        session.select(Selection.of(Place.START, block.id()));
        tab.show();
    }

    private FieldPanel seen() {
        return (FieldPanel) ((JScrollPane) tab.component()).getViewport().getView();
    }

    private static Optional<String> text(FieldPanel panel, String name) {
        return Stream.of(panel.getComponents())
                .filter(each -> name.equals(each.getName()))
                .map(each -> ((JTextComponent) each).getText())
                .findFirst();
    }

    private Block named(Block block, String name) {
        Block named = block.withTag(block.tag().withLabel(name));
        session.edit(Edit.of("name", piece -> desk.edits().replaced(piece, Place.START, named)));
        return named;
    }

    @Test
    void theFieldsBeforeStayUntilAllNewOnesAreThere() throws Exception {
        FieldPanel first = event(() -> {
            show(blocks.get(0));
            return seen();
        });
        FieldPanel before = event(this::seen);
        FieldPanel meanwhile = event(() -> {
            show(blocks.get(1));
            return seen();
        });
        FieldPanel after = event(this::seen);

        assertThat(first).isNull();
        assertThat(before).isNotNull();
        assertThat(meanwhile).isSameAs(before);
        assertThat(after).isNotSameAs(before);
        assertThat(after.getComponentCount())
                .isEqualTo(event(() -> BlockForm.of(desk).whole()).getComponentCount());
    }

    /** Selects a block; its fields, once they are there. */
    private FieldPanel shown(Block block) throws Exception {
        event(() -> {
            show(block);
            return null;
        });
        return event(this::seen);
    }

    @Test
    void ofTwoBlocksInARowTheLastOneIsSeen() throws Exception {
        named(blocks.get(2), "the last");
        event(() -> {
            show(blocks.get(1));
            show(blocks.get(2));
            return null;
        });

        assertThat(text(event(this::seen), "field.block.label")).contains("the last");
    }

    @Test
    void whoGoesBackWhileTheyAreMadeKeepsTheFieldsBefore() throws Exception {
        FieldPanel before = shown(blocks.get(0));
        event(() -> {
            show(blocks.get(1));
            show(blocks.get(0));
            return null;
        });

        assertThat(event(this::seen)).isSameAs(before);
    }

    @Test
    void whatChangesWhileTheyAreMadeIsSaid() throws Exception {
        event(() -> {
            show(blocks.get(1));
            EventQueue.invokeLater(() -> {
                named(blocks.get(1), "another name");
                tab.show();
            });
            return null;
        });

        assertThat(text(event(this::seen), "field.block.label")).contains("another name");
    }

    /** Behind another tab nobody says so. */
    @Test
    void fieldsOfABlockThatGoesWhileTheyAreMadeAreGivenUp() throws Exception {
        FieldPanel before = shown(blocks.get(0));
        event(() -> {
            show(blocks.get(1));
            session.edit(Edit.of(
                    "out",
                    piece -> piece.withStart(
                            piece.start().without(List.of(blocks.get(1).id())))));
            return null;
        });

        assertThat(event(this::seen)).isSameAs(before);
        event(() -> {
            show(blocks.get(2));
            return null;
        });
        assertThat(event(this::seen)).isNotSameAs(before);
    }

    @Test
    void whatIsTypedMeanwhileIsTaken() throws Exception {
        event(() -> {
            show(blocks.get(0));
            return null;
        });
        event(() -> {
            FieldPanel before = seen();
            show(blocks.get(1));
            type(before, "field.block.label", "typed late");
            return null;
        });
        event(() -> null);

        assertThat(session.piece()
                        .block(Place.START, blocks.get(0).id())
                        .orElseThrow()
                        .tag()
                        .label())
                .isEqualTo("typed late");
    }

    private static void type(FieldPanel panel, String name, String typed) {
        Stream.of(panel.getComponents())
                .filter(each -> name.equals(each.getName()))
                .forEach(each -> ((JTextComponent) each).setText(typed));
    }
}

package thrumwright.editor.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Laying;
import thrumwright.testing.Pieces;

/** What fields say changes; what stands round them stays where it is. */
class FieldColumnTest {
    private final Session session = new Session(new PieceFile(Pieces.panel(), Unknown.none()), Optional.empty());
    private final Texts texts = Texts.of(Locale.UK);
    private final Desk desk = new Desk(session, new Edits(texts.phrases(), texts.words()), texts);
    private final Laying laying = new Laying();

    @BeforeEach
    void count() throws Exception {
        laying.begin();
    }

    @AfterEach
    void leave() throws Exception {
        laying.end();
    }

    @Test
    void anotherTextInAFieldLaysNothingOut() throws Exception {
        String id = session.piece().start().blocks().get(0).id();
        session.select(Selection.of(Place.START, id));
        FieldPanel panel = BlockForm.of(desk).whole();
        EventQueue.invokeAndWait(() -> {
            panel.setSize(300, panel.getPreferredSize().height);
            panel.doLayout();
        });
        // sentences whose width is new ask once more by an event of their own
        EventQueue.invokeAndWait(panel::doLayout);
        EventQueue.invokeAndWait(() -> {
            laying.forget();
            label(panel).setText("another name");
        });

        assertThat(label(panel).getText()).isEqualTo("another name");
        assertThat(laying.asked()).isZero();
    }

    private static JTextField label(FieldPanel panel) {
        return Stream.of(panel.getComponents())
                .filter(each -> "field.block.label".equals(each.getName()))
                .map(JTextField.class::cast)
                .findFirst()
                .orElseThrow();
    }
}

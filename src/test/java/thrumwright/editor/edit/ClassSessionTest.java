package thrumwright.editor.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.store.ClassFile;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

class ClassSessionTest {
    private static final Piece PANEL = Pieces.panel();

    private final ClassSession session = ClassSession.of(PANEL);

    private void name(String name, Object run) {
        int index = session.selected();
        session.edit(set -> set.with(index, set.members().get(index).withName(name)), run);
    }

    @Test
    void whatIsTypedInOneRunIsOneStep() {
        Object run = new Object();
        for (String typed : List.of("A", "As", "Ast", "Asta")) {
            name(typed, run);
        }
        session.undo();
        assertThat(session.member().name()).isEmpty();
        assertThat(session.canUndo()).isFalse();
        session.redo();
        assertThat(session.member().name()).isEqualTo("Asta");
        session.endRun();
        name("Astrid", run);
        session.dropRun(run);
        assertThat(session.member().name()).isEqualTo("Asta");
    }

    /** Whatever is done can be taken back to the beginning and done again to the same end. */
    @Test
    void allStepsLeadBackAndForth() {
        RandomClasses classes = new RandomClasses(61);
        RandomGenerator random = classes.random();
        for (int round = 0; round < Seeds.of(30, 10); round++) {
            ClassSession each = new ClassSession(ClassFile.fresh(classes.next()), Optional.empty());
            List<ClassSet> states = new ArrayList<>(List.of(each.set()));
            for (int i = 0; i < 12; i++) {
                ClassSet before = each.set();
                switch (random.nextInt(3)) {
                    case 0 -> each.add();
                    case 1 -> each.edit(set -> set.withTitle("class " + states.size()), null);
                    default -> {
                        if (each.canRemove()) {
                            each.remove();
                        }
                    }
                }
                each.select(random.nextInt(each.set().members().size()));
                if (!each.set().equals(before)) {
                    states.add(each.set());
                }
            }
            for (int i = states.size() - 1; i > 0; i--) {
                assertThat(each.set()).isEqualTo(states.get(i));
                assertThat(each.selected()).isBetween(0, each.set().members().size() - 1);
                each.undo();
            }
            assertThat(each.set()).isEqualTo(states.get(0));
            assertThat(each.dirty()).isFalse();
            states.forEach(state -> each.redo());
            assertThat(each.set()).isEqualTo(states.get(states.size() - 1));
        }
    }

    @Test
    void aChangeThatRefusesChangesNothing() {
        ClassSet before = session.set();
        Length wide = Length.parse("50 cm");
        assertThatThrownBy(() ->
                        session.edit(set -> set.with(0, set.members().get(0).withWidth(Optional.of(wide))), null))
                .hasMessageContaining("doesn't fit between the posts");
        assertThat(session.set()).isSameAs(before);
        assertThat(session.canUndo()).isFalse();
    }

    @Test
    void theClassFollowsItsPieceAndSaysWhenItCannot() {
        name("Asta", null);
        Piece lower = PANEL.withTitle("Lower");
        session.follow(lower);
        assertThat(session.plan().plans().get(0).piece().title()).isEqualTo("Lower");
        session.undo();
        assertThat(session.set().piece()).isEqualTo(lower);

        session.edit(set -> set.with(0, set.members().get(0).withWidth(Optional.of(Length.parse("29 cm")))), null);
        Piece narrow = PANEL.withWarp(PANEL.warp().withWidth(Length.parse("10 cm")));
        session.follow(narrow);
        assertThat(session.lost()).hasValueSatisfying(why -> assertThat(why).contains("29 cm"));
        assertThat(session.set().piece()).isEqualTo(lower);
        session.follow(PANEL);
        assertThat(session.lost()).isEmpty();
        assertThat(session.set().piece()).isEqualTo(PANEL);
    }

    @Test
    void savedIsWhatIsOnFile() {
        session.add();
        assertThat(session.dirty()).isTrue();
        session.saved(session.file(), Path.of("class.json"));
        assertThat(session.dirty()).isFalse();
        session.follow(PANEL.withTitle("Other"));
        assertThat(session.dirty()).isFalse();
        session.undo();
        assertThat(session.dirty()).isTrue();
        session.redo();
        assertThat(session.dirty()).isFalse();
        assertThat(session.set().members()).containsExactly(ClassMember.named(""), ClassMember.named(""));
    }
}

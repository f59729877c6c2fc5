package thrumwright.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thrumwright.block.OpenWarp;
import thrumwright.block.Tag;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.testing.Pieces;

class ClassSetTest {
    private static final Piece PANEL = Pieces.panel();

    private static Piece on(ClassMember member) {
        return member.on(PANEL);
    }

    private static Optional<Length> length(String text) {
        return Optional.of(Length.parse(text));
    }

    @Test
    void aMemberWithoutAnythingOfItsOwnWeavesThePieceItself() {
        assertThat(on(ClassMember.named("Asta"))).isEqualTo(PANEL);
        assertThat(new ClassSet("", PANEL, List.of(), List.of(ClassMember.named(""))).pieces())
                .containsExactly(PANEL);
    }

    @Test
    void aClassHasOnlySoManyBlocks() {
        Piece many = PANEL;
        for (int i = 0; i < 20; i++) {
            many = many.withStart(many.start().with(0, new OpenWarp(Tag.of("gap " + i), Length.parse("1 cm"))));
        }
        int looms = ClassSet.MOST_BLOCKS / many.countBlocks();
        ClassSet most = new ClassSet("", many, List.of(), Collections.nCopies(looms, ClassMember.named("")));
        assertThat(most.takesMore()).isFalse();
        assertThat(most.without(0).takesMore()).isTrue();
        assertThatThrownBy(() -> most.withMore(0, ClassMember.named("")))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("The looms of a class have at most 3000 blocks together, not "
                        + most.piece().countBlocks() * (looms + 1) + " on " + (looms + 1)
                        + " looms; make several classes of it.");
    }

    /** The panel's posts stand 30 mm from a warp of 24 cm at 3/cm. */
    @ParameterizedTest
    @CsvSource({"18 cm, 60", "24 cm, 30", "29.9 cm, 0.5", "30 cm, 0"})
    void postsStayWhereTheyAreOnANarrowerOrWiderWarp(String width, double gap) {
        Piece piece = on(ClassMember.named("").withWidth(length(width)));
        assertThat(piece.loom().posts().orElseThrow().gap()).isCloseTo(gap, within(1.5));
        double between = piece.setting(piece.warpYarn()).span()
                + 2 * piece.loom().posts().orElseThrow().gap();
        assertThat(between).isCloseTo(PANEL.setting(PANEL.warpYarn()).span() + 60, within(1e-6));
    }

    @Test
    void aWarpThatIsTooWideForThePostsIsRefused() {
        ClassMember wide = ClassMember.named("").withWidth(length("31 cm"));
        assertThatThrownBy(() -> on(wide))
                .isInstanceOf(BadMeasure.class)
                .hasMessage("A warp of 31 cm doesn't fit between the posts of the piece's loom. Give this loom's own "
                        + "posts, or say that it has none.");
        assertThat(on(wide.withPosts(Optional.of(ClassMember.OwnPosts.NONE)))
                        .loom()
                        .uprights())
                .isEmpty();
    }

    /**
     * The panel takes 80 cm an end on a loom of 70 cm. An end over one face takes 10 cm less on a loom of 60 cm; one over
     * both faces of a loom of 105 cm takes 115 or at most 80 · 105 / 70.
     */
    @ParameterizedTest
    @CsvSource({"70 cm, 80 cm", "60 cm, 70 cm", "105 cm, 120 cm", "700 mm, 80 cm"})
    void aWarpEndIsAsMuchLongerAsItsLoomAsks(String open, String perEnd) {
        Loom loom = on(ClassMember.named("").withOpen(length(open))).loom();
        assertThat(loom.warpPerEnd()).contains(Length.parse(perEnd));
        Loom own = on(ClassMember.named("").withOpen(length(open)).withWarpPerEnd(length("99 cm")))
                .loom();
        assertThat(own.warpPerEnd()).contains(Length.parse("99 cm"));
    }

    /** Whichever way the warp goes round the bars, with whatever is lost, what is taken for an end is enough. */
    @Test
    void aWarpEndIsNeverTooShort() {
        for (int faces = 1; faces <= 2; faces++) {
            for (int lost = 0; lost <= 40; lost += 5) {
                for (int open = 20; open <= 200; open += 7) {
                    Loom loom = PANEL.loom().withWarpPerEnd(Optional.of(Length.parse(faces * 70 + lost + " cm")));
                    Piece piece =
                            ClassMember.named("").withOpen(length(open + " cm")).on(PANEL.withLoom(loom));
                    assertThat(piece.loom().warpPerEnd().orElseThrow().mm())
                            .isGreaterThanOrEqualTo(10.0 * (faces * open + lost) - 1e-6);
                }
            }
        }
    }

    @Test
    void everyMemberHasItsOwnNumbersAndTheRestOfThePiece() {
        ClassMember member = ClassMember.named("Fenna")
                .withLoom(Optional.of("Small frame"))
                .withWidth(length("12 cm"))
                .withSett(Optional.of(Sett.parse("4/cm")))
                .withFirstYarn(Optional.of("more"))
                .withLastYarn(Optional.of("waste"));
        ClassSet set = new ClassSet(
                "Tuesday",
                PANEL,
                List.of(PANEL.yarn("weft").withId("more").withStock(length("3 m"))),
                List.of(ClassMember.named(""), member));
        Piece piece = set.pieces().get(1);
        assertThat(piece.warp().ends()).isEqualTo(48);
        assertThat(piece.loom().name()).isEqualTo("Small frame");
        assertThat(piece.stripe(Place.START).id()).isEqualTo("more");
        assertThat(piece.stripe(Place.TOP).id()).isEqualTo("waste");
        assertThat(piece.start()).isEqualTo(PANEL.start());
        assertThat(piece.yarns()).hasSize(4).allMatch(yarn -> yarn.stock().isEmpty());
        assertThat(set.withAllYarns().yarn("more").stock()).isEqualTo(length("3 m"));
    }

    @Test
    void whatNoLoomCanWeaveIsRefused() {
        List<ClassMember> one = List.of(ClassMember.named("Asta"));
        assertThatThrownBy(() -> new ClassSet("", PANEL, List.of(), List.of())).hasMessageContaining("1 to 200 looms");
        assertThatThrownBy(() -> new ClassSet("", PANEL, List.of(PANEL.yarn("weft")), one))
                .hasMessage("There are two yarns with the id “weft”.");
        assertThatThrownBy(() ->
                        new ClassSet("", PANEL, List.of(), List.of(one.get(0).withFirstYarn(Optional.of("moon")))))
                .hasMessageContaining("“moon”");
        assertThatThrownBy(() -> ClassMember.named("a".repeat(81))).hasMessageContaining("at most 80 letters");
    }
}

package thrumwright.plan.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WrappedTassels;
import thrumwright.block.YarnBlock;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.plan.comparison.BlockPair.Aspect;
import thrumwright.plan.words.ComparisonWords;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.testing.WorkedPanel;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

class EndComparisonTest {
    private final Piece panel = Pieces.panel();

    private static EndComparison of(Piece piece) {
        return EndComparison.of(Plan.of(piece));
    }

    private static List<String> front(Piece piece) {
        return words(piece).front(of(piece));
    }

    private static ComparisonWords words(Piece piece) {
        return new ComparisonWords(Locale.UK, piece.shown());
    }

    private static List<String> said(Piece piece, String id) {
        return of(piece).pairs().stream()
                .filter(pair -> pair.block().id().equals(id))
                .flatMap(pair -> words(piece).of(pair).stream())
                .toList();
    }

    /** The panel with a top of its own in which one block is another. */
    private Piece withTop(Block other) {
        return panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP).replaced(other)));
    }

    private <B extends Block> B top(String id, Class<B> kind) {
        return kind.cast(panel.end(Place.TOP).block(id).orElseThrow());
    }

    /** The same piece with a true mirror of its start on top, and one yarn in both stripes. */
    private static Piece mirrored(Piece piece) {
        Design design = piece.design();
        return piece.withDesign(new Design(
                        design.height(),
                        design.firstYarnId(),
                        design.firstYarnId(),
                        design.lastShed(),
                        design.lastSide(),
                        design.relaxing()))
                .withTop(new Top.FollowsStart(Set.of()));
    }

    @Test
    void aTrueMirrorLooksAlike() {
        RandomPieces pieces = new RandomPieces(31);
        for (int i = 0; i < Seeds.of(1000); i++) {
            Piece piece = mirrored(pieces.next());
            assertThat(front(piece)).containsExactly("Both ends look alike from the front.");
            Piece own = piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP)));
            assertThat(of(own).front()).isEmpty();
        }
    }

    /** In a mirror all blocks have their partner; what differs there is only how the weaver comes by it. */
    @Test
    void aTrueMirrorPairsEveryBlockWithItself() {
        RandomPieces pieces = new RandomPieces(32);
        for (int i = 0; i < Seeds.of(500); i++) {
            Piece piece = mirrored(pieces.next());
            List<BlockPair> pairs = of(piece).pairs();
            assertThat(pairs).hasSameSizeAs(piece.start().blocks());
            for (int at = 0; at < pairs.size(); at++) {
                String id = piece.start().blocks().get(at).id();
                assertThat(pairs.get(at).start().orElseThrow().block().id()).isEqualTo(id);
                assertThat(pairs.get(at).top().orElseThrow().block().id()).isEqualTo(id);
                assertThat(pairs.get(at).differences()).isSubsetOf(Aspect.LEAN, Aspect.SHED, Aspect.SIDE);
            }
        }
    }

    /** Another colour, amount or lean of anything that the front shows is found. */
    @Test
    void whateverIsChangedInFrontIsFound() {
        RandomPieces pieces = new RandomPieces(33);
        int tried = 0;
        for (int i = 0; i < Seeds.of(700); i++) {
            Piece piece = mirrored(pieces.next());
            Plan plan = Plan.of(piece);
            List<FrontBand> shown = EndComparison.front(plan, Place.TOP).stream()
                    .filter(band -> !band.open())
                    .toList();
            if (shown.isEmpty()) {
                continue;
            }
            FrontBand band = shown.get(pieces.random().nextInt(shown.size()));
            for (Piece changed : changed(piece, band)) {
                tried++;
                assertThat(of(changed).alike()).as("%s", changed.end(Place.TOP)).isFalse();
                assertThat(front(changed)).allSatisfy(EndComparisonTest::isASentence);
            }
        }
        assertThat(tried).isGreaterThan(Seeds.of(600));
    }

    private static void isASentence(String said) {
        assertThat(said).endsWith(".").doesNotContain("{").doesNotContain("()");
    }

    private static List<Piece> changed(Piece piece, FrontBand band) {
        YarnBlock block = (YarnBlock) band.block();
        List<Piece> changed = new ArrayList<>();
        Yarn other = strange(piece.yarnOf(block, Place.TOP));
        List<Yarn> yarns = new ArrayList<>(piece.yarns());
        yarns.add(other);
        End top = piece.end(Place.TOP);
        changed.add(piece.withYarns(yarns)
                .withTop(
                        new Top.OnItsOwn(top.replaced(block.withUse(block.use().with(new Material.Own(other.id())))))));
        // More rows of a block in which the hem folds would lie behind.
        boolean whole = band.rows() == Math.rint(band.rows());
        more(block, piece)
                .filter(more -> whole)
                .ifPresent(more -> changed.add(piece.withTop(new Top.OnItsOwn(top.replaced(more)))));
        turned(block).ifPresent(turn -> changed.add(piece.withTop(new Top.OnItsOwn(top.replaced(turn)))));
        return changed;
    }

    private static Yarn strange(Yarn yarn) {
        Yarn single = yarn.bundle()
                .map(bundle -> bundle.parts().get(0).yarn().withColour(yarn.colour()))
                .orElse(yarn);
        return single.withId("strange").withColour(new Colour(single.colour().rgb() ^ 0x808080));
    }

    private static Optional<Block> more(YarnBlock block, Piece piece) {
        int rows = block.rowCount(piece.setting(piece.yarnOf(block, Place.TOP))) + 1;
        if (block instanceof PlainBand band) {
            return Optional.of(band.withAmount(new Amount.Picks(rows)));
        } else if (block instanceof OrderingCord cord) {
            return Optional.of(cord.withPicks(rows));
        } else if (block instanceof Twining twining) {
            return Optional.of(twining.withRows(rows));
        } else if (block instanceof Soumak soumak) {
            return Optional.of(soumak.withRows(rows));
        } else if (block instanceof HalfHitch hitch) {
            return Optional.of(hitch.withRows(rows));
        }
        return Optional.empty();
    }

    private static Optional<Block> turned(YarnBlock block) {
        if (block instanceof Twining twining) {
            return Optional.of(new Twining(
                    twining.tag(),
                    twining.use(),
                    twining.rows(),
                    twining.endsPerGroup(),
                    twining.first().other(),
                    twining.countered()));
        } else if (block instanceof Soumak soumak) {
            return Optional.of(new Soumak(
                    soumak.tag(),
                    soumak.use(),
                    soumak.rows(),
                    soumak.over(),
                    soumak.under(),
                    soumak.first().other(),
                    soumak.countered()));
        }
        return Optional.empty();
    }

    /** Half of the worked panel's soumak row, 3 mm high, lies in front of the fold. */
    @Test
    void thePanelShowsHalfItsSoumakRow() {
        List<FrontBand> bands = EndComparison.front(Plan.of(panel), Place.START);
        assertThat(bands).hasSize(1);
        assertThat(bands.get(0).height()).isEqualTo(1.5);
        assertThat(bands.get(0).rows()).isEqualTo(0.5);
        assertThat(bands.get(0).leans()).containsExactly(Lean.Z);
        assertThat(EndComparison.front(Plan.of(panel), Place.TOP).get(0).leans())
                .containsExactly(Lean.Z);
    }

    @Test
    void moreSoumakAtTheTopIsSaidWithBothHeights() {
        assertThat(front(withMore()))
                .containsExactly("The start shows 1.5 mm of soumak in Teal wool, the top 5 mm of soumak in Teal wool.");
    }

    /** One more row of soumak between the fold and the design. */
    private Piece withMore() {
        Soumak more = top("soumak", Soumak.class).withTag(Tag.of("more"));
        return panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP).with(0, more)));
    }

    @Test
    void anotherColourIsSaid() {
        Soumak soumak = top("soumak", Soumak.class);
        Piece other = withTop(soumak.withUse(soumak.use().with(new Material.OfRole(MaterialRole.WARP_CORD))));
        assertThat(front(other))
                .contains("The start shows 1.5 mm of soumak in Teal wool, the top 0.6 mm of soumak in Cotton cord.");
        Yarn weft = panel.yarn("weft");
        Yarn twin = strange(weft);
        Piece twins = panel.withYarns(List.of(WorkedPanel.cord(), weft, weft.withId("waste"), twin))
                .withTop(new Top.OnItsOwn(panel.end(Place.TOP)
                        .replaced(soumak.withUse(soumak.use().with(new Material.Own("strange"))))));
        assertThat(front(twins))
                .singleElement()
                .asString()
                .contains(weft.colour().text(), twin.colour().text());
    }

    /** The start leans like Z; its mirror leans like S, so that Z at the top is wrong. */
    @Test
    void aSlantThatIsNotTurnedOverIsSaid() {
        Piece wrong = withTop(turned(top("soumak", Soumak.class)).orElseThrow());
        assertThat(front(wrong))
                .containsExactly("The soumak in the start leans / like the stroke in Z. As its mirror the top’s has to "
                        + "lean \\ like the stroke in S, but it leans / like the stroke in Z.");
    }

    @Test
    void hemsOfDifferentDepthAreSaid() {
        PlainBand facing = top("facing", PlainBand.class);
        assertThat(front(withTop(facing.withAmount(new Amount.Picks(10)))))
                .containsExactly("The bottom hem is 1.4 cm deep, the top hem 1.8 cm.");
        Piece flat = panel.withTop(new Top.OnItsOwn(panel.end(Place.TOP).without(Set.of("fold"))));
        assertThat(front(flat)).first().asString().isEqualTo("The start has a hem 1.4 cm deep, the top has none.");
    }

    /** What lies behind when the hem is folded isn't seen, as long as the depth stays. */
    @Test
    void whatLiesBehindTheFoldIsNotSeen() {
        Twining twining = top("twining", Twining.class);
        Piece hidden = withTop(turned(twining).orElseThrow());
        assertThat(of(hidden).alike()).isTrue();
        assertThat(said(hidden, "twining")).noneMatch(sentence -> sentence.contains("row leans"));
        assertThat(said(panel, "twining")).anyMatch(sentence -> sentence.contains("row leans"));
    }

    @Test
    void fringesAreCompared() {
        WarpFinish knots = new WarpFinish(Tag.of("f"), WarpFinish.Kind.KNOTTED, 4, Length.parse("8 cm"));
        End fringed = new End(
                List.of(knots, new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false)));
        Piece piece = panel.withStart(fringed).withTop(new Top.FollowsStart(Set.of()));
        assertThat(front(piece)).containsExactly("Both ends look alike from the front.");
        WarpFinish longer = new WarpFinish(Tag.of("f"), WarpFinish.Kind.PLIED, 6, Length.parse("12 cm"));
        Piece other = piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP).replaced(longer)));
        assertThat(front(other))
                .containsExactly("The start ends in a knotted fringe, 8 cm long, 4 ends together, the top in a plied "
                        + "fringe, 12 cm long, 6 ends together.");
        assertThat(front(piece.withTop(new Top.FollowsStart(Set.of("f")))))
                .containsExactly(
                        "The start ends in a knotted fringe, 8 cm long, 4 ends together, the top has no fringe.");
    }

    /** What tassels are wrapped with is seen, and it is their yarn: the stripes' where they take the weft. */
    @Test
    void whatTasselsAreWrappedWithIsCompared() {
        WrappedTassels tassels =
                new WrappedTassels(Tag.of("t"), Use.of(MaterialRole.WEFT), 6, 12, Length.parse("8 cm"));
        End tasselled = new End(
                List.of(tassels, new Twining(Tag.of("twining"), Use.of(MaterialRole.WARP_CORD), 1, 1, Lean.Z, false)));
        Piece piece = panel.withStart(tasselled).withTop(new Top.FollowsStart(Set.of()));
        assertThat(front(piece)).containsExactly("Both ends look alike from the front.");
        assertThat(said(piece, "t")).isEmpty();

        Piece cord = piece.withTop(
                new Top.OnItsOwn(piece.end(Place.TOP).replaced(tassels.withUse(Use.of(MaterialRole.WARP_CORD)))));
        assertThat(said(cord, "t")).containsExactly("In Teal wool; at the top in Cotton cord.");
        assertThat(front(cord))
                .containsExactly("The start ends in tassels, 8 cm long, 6 ends together, 12 turns of wrapping in Teal "
                        + "wool, 1.2 cm high, the top in tassels, 8 cm long, 6 ends together, 12 turns of wrapping in "
                        + "Cotton cord, 9 mm high.");

        Yarn weft = panel.yarn("weft");
        Design design = panel.design();
        Piece stripes = piece.withYarns(List.of(WorkedPanel.cord(), weft, weft.withId("waste"), strange(weft)))
                .withDesign(new Design(
                        design.height(), "weft", "strange", design.lastShed(), design.lastSide(), design.relaxing()));
        assertThat(said(stripes, "t")).singleElement().asString().contains("in another yarn of that name");
        assertThat(front(stripes))
                .singleElement()
                .asString()
                .contains(weft.colour().text());

        Piece turns = piece.withTop(new Top.OnItsOwn(piece.end(Place.TOP).replaced(tassels.withTurns(20))));
        assertThat(said(turns, "t"))
                .containsExactly("It is worked otherwise: tassels, 8 cm long, 6 ends together, 12 turns of wrapping in "
                        + "the start, tassels, 8 cm long, 6 ends together, 20 turns of wrapping in the top.");
        assertThat(of(turns).alike()).isFalse();
    }

    @Test
    void whatIsLeftOutIsSaid() {
        EndComparison comparison = of(panel);
        assertThat(comparison.pairs().get(0).differences()).containsExactly(Aspect.LEFT_OUT);
        assertThat(said(panel, "ordering")).containsExactly("Left out of the top: Ordering cord.");
        Piece more = panel.withTop(
                new Top.OnItsOwn(panel.end(Place.TOP).with(0, new OpenWarp(Tag.of("gap"), Length.parse("1 cm")))));
        assertThat(said(more, "gap")).containsExactly("In the top only: Open warp.");
        assertThat(front(more)).contains("The top shows 1 cm of open warp where the start has nothing.");
    }

    @Test
    void eachAspectOfThePairsIsSaid() {
        PlainBand facing = top("facing", PlainBand.class);
        PlainBand other = new PlainBand(
                facing.tag(),
                new Use(new Material.OfRole(MaterialRole.WARP_CORD), true, Optional.of(Side.LEFT)),
                PlainBand.Purpose.PLAIN,
                new Amount.Picks(4),
                Optional.of(Shed.OVER_FIRST));
        Piece piece = withTop(other);
        assertThat(said(piece, "facing"))
                .containsExactly(
                        "Facing in the start, Plain band in the top.",
                        "In Teal wool; at the top in Cotton cord.",
                        "6 rows in the start, 4 in the top.",
                        "6 mm high in the start, 3 mm in the top.",
                        "The first pick goes under the left edge end in the start, over the left edge end in the top.",
                        "Stays in the start; in the top it comes out again.");
        Soumak soumak = top("soumak", Soumak.class);
        Soumak wide = new Soumak(soumak.tag(), soumak.use(), 1, 4, 2, soumak.first(), false);
        assertThat(said(withTop(wide), "soumak"))
                .contains("It is worked otherwise: over 2, under 1 in the start, over 4, under 2 in the top.");
        HemFold bar = new HemFold(
                Tag.of("fold"),
                Optional.of(Length.parse("5 mm")),
                Optional.of(new Support.RoundBar(Length.parse("8 mm"))));
        assertThat(said(withTop(bar), "fold"))
                .containsExactly(
                        "It is worked otherwise: turned once in the start, turned twice, 5 mm first, for a bar "
                                + "of 8 mm in the top.");
    }

    @Test
    void inchesAreSaidInInches() {
        assertThat(front(withMore().withHabits(Habits.usual(UnitSystem.INCHES))))
                .containsExactly(
                        "The start shows ¹⁄₁₆ in of soumak in Teal wool, the top ³⁄₁₆ in of soumak in Teal wool.");
    }

    @Test
    void everySentenceOfEveryRandomPieceCanBeSaid() {
        RandomPieces pieces = new RandomPieces(34);
        for (int i = 0; i < Seeds.of(500); i++) {
            Piece piece = pieces.next();
            EndComparison comparison = of(piece);
            assertThat(words(piece).front(comparison)).isNotEmpty().allSatisfy(EndComparisonTest::isASentence);
            for (BlockPair pair : comparison.pairs()) {
                assertThat(words(piece).of(pair))
                        .hasSameSizeAs(pair.differences())
                        .allSatisfy(EndComparisonTest::isASentence);
            }
        }
    }

    @Test
    void aBlockOfEveryStartAndTopStandsInExactlyOnePair() {
        RandomPieces pieces = new RandomPieces(35);
        for (int i = 0; i < Seeds.of(300); i++) {
            Piece piece = pieces.next();
            List<BlockPair> pairs = of(piece).pairs();
            assertThat(pairs.stream()
                            .flatMap(pair -> pair.start().stream())
                            .map(plan -> plan.block().id()))
                    .containsExactlyElementsOf(
                            piece.start().blocks().stream().map(Block::id).toList());
            List<String> downwards = new ArrayList<>(
                    piece.end(Place.TOP).blocks().stream().map(Block::id).toList());
            java.util.Collections.reverse(downwards);
            assertThat(pairs.stream()
                            .flatMap(pair -> pair.top().stream())
                            .map(plan -> plan.block().id()))
                    .containsExactlyElementsOf(downwards);
        }
    }
}

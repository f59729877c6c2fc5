package thrumwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thrumwright.block.Block;
import thrumwright.block.Course;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.PlainBand;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Support;
import thrumwright.block.Tag;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.drawing.piece.PiecePainter;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.drawing.step.StepPainter;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.measure.Length;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;
import thrumwright.testing.WorkedPanel;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Yarn;

class PaintersTest {
    private static final int MAGENTA = 0xff00ff;

    static Stream<Palette> palettes() {
        return Stream.of(
                Palette.onPaper(),
                Palette.onLightScreen(),
                Palette.onDarkScreen(),
                Palette.blackAndWhite(List.of(new Colour(0x2a6f78))));
    }

    private static BufferedImage picture(int width, int height, Color paper, Consumer<Graphics2D> painting) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(paper);
        g.fillRect(0, 0, width, height);
        painting.accept(g);
        g.dispose();
        return image;
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static void paint(Graphics2D g, PiecePicture picture, Palette palette, double scale) {
        new PiecePainter(g, palette, true)
                .piece(new View(scale, picture.margin() * scale, (picture.height() + 4) * scale), picture, 4);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void theSamePieceMakesTheSamePicture(Palette palette) {
        Plan plan = Plan.of(Pieces.panel());
        PiecePicture once = PiecePicture.of(plan);
        PiecePicture again = PiecePicture.of(Plan.of(Pieces.panel()));
        PiecePicture next = once.next(Plan.of(Pieces.panel()));
        int[] first = pixels(picture(1200, 400, palette.paper(), g -> paint(g, once, palette, 3.4)));
        assertThat(pixels(picture(1200, 400, palette.paper(), g -> paint(g, again, palette, 3.4))))
                .isEqualTo(first);
        assertThat(pixels(picture(1200, 400, palette.paper(), g -> paint(g, next, palette, 3.4))))
                .isEqualTo(first);
    }

    /** A yarn lies where it passes in front and the warp where it passes behind; from behind, the other way round. */
    @ParameterizedTest
    @EnumSource(Face.class)
    void overAndUnderCanBeSeen(Face face) {
        Setting setting = new Setting(9, 8, 1.6, 1.6, 1.6, Optional.empty());
        Yarn red = WorkedPanel.weft().withColour(new Colour(0xd01010));
        Yarn white = WorkedPanel.cord().withColour(new Colour(0xf4f4f4));
        int picks = 5;
        double scale = 6;
        BufferedImage image = picture(480, 80, Color.WHITE, g -> {
            View view = new View(scale, 30, 64);
            BlockPicture band =
                    BlockPicture.picks(red, setting, picks, new Course(Optional.of(Shed.UNDER_FIRST), Side.LEFT));
            g.transform(face.turned(view, setting.span()));
            new ClothPainter(g, Palette.onPaper(), true, face)
                    .blocks(
                            view,
                            List.of(new ClothPainter.PlacedBlock(band, 0, band.height())),
                            List.of(),
                            setting,
                            white,
                            -1,
                            10);
        });
        for (int end = 0; end < setting.ends(); end++) {
            for (int pick = 0; pick < picks; pick++) {
                int place = face == Face.FRONT ? end : setting.ends() - 1 - end;
                // the first pick goes over the left edge end, and ends and picks alternate
                boolean over = ((end + pick) % 2 == 0) == (face == Face.FRONT);
                int x = (int) Math.round(30 + place * setting.spacing() * scale);
                int y = (int) Math.round(64 - (pick + 0.5) * setting.beaten() * scale);
                Color seen = new Color(image.getRGB(x, y));
                assertThat(seen.getRed() - seen.getBlue() > 80)
                        .as("end %d pick %d: %s", end, pick, seen)
                        .isEqualTo(over);
            }
        }
    }

    @Test
    void aRegionIsPaintedLikeTheWhole() {
        PiecePicture picture = PiecePicture.of(rich());
        Palette palette = Palette.onLightScreen();
        BufferedImage whole = picture(900, 500, palette.paper(), g -> paint(g, picture, palette, 2.6));
        Rectangle region = new Rectangle(311, 87, 160, 210);
        BufferedImage part = picture(900, 500, new Color(MAGENTA), g -> {
            g.clip(region);
            g.setColor(palette.paper());
            g.fill(region);
            paint(g, picture, palette, 2.6);
        });
        int different = 0;
        int outside = 0;
        for (int y = 0; y < 500; y++) {
            for (int x = 0; x < 900; x++) {
                if (!region.contains(x, y)) {
                    outside += (part.getRGB(x, y) & 0xffffff) == MAGENTA ? 0 : 1;
                } else if (distance(part.getRGB(x, y), whole.getRGB(x, y)) > 12) {
                    different++;
                }
            }
        }
        assertThat(outside).isZero();
        assertThat(different).isLessThan(region.width * region.height / 500);
    }

    private static int distance(int one, int other) {
        Color a = new Color(one);
        Color b = new Color(other);
        return Math.abs(a.getRed() - b.getRed())
                + Math.abs(a.getGreen() - b.getGreen())
                + Math.abs(a.getBlue() - b.getBlue());
    }

    /** From far away a texture stands for the yarns: the picture gets neither lighter nor darker by it. */
    @Test
    void aTextureLooksLikeItsYarns() {
        PiecePicture picture = PiecePicture.of(Plan.of(Pieces.panel()));
        Palette palette = Palette.onLightScreen();
        double scale = 0.55;
        View view = new View(scale, picture.margin() * scale, (picture.height() + 4) * scale);
        BufferedImage yarns =
                picture(220, 60, palette.paper(), g -> new PiecePainter(g, palette, true).piece(view, picture, 4));
        BufferedImage texture =
                picture(220, 60, palette.paper(), g -> new PiecePainter(g, palette, false).piece(view, picture, 4));
        BlockPlan facing = picture.plan().start().block("facing").orElseThrow();
        double middle = facing.bottom() + facing.height() / 2;
        int y = (int) Math.floor(view.y(middle));
        for (int channel = 0; channel < 24; channel += 8) {
            double sum = 0;
            double wanted = 0;
            int from = (int) view.x(10);
            int to = (int) view.x(picture.span() - 10);
            for (int x = from; x < to; x++) {
                sum += texture.getRGB(x, y) >> channel & 0xff;
                wanted += yarns.getRGB(x, y) >> channel & 0xff;
            }
            assertThat(sum / (to - from)).isCloseTo(wanted / (to - from), within(12.0));
        }
    }

    /** As the top is shown beside the start, to compare them. */
    @ParameterizedTest
    @ValueSource(doubles = {0.55, 1.7, 3})
    void aPictureTurnedByHalfATurnLooksLikeThePicture(double scale) {
        PiecePicture picture = PiecePicture.of(Plan.of(Pieces.panel()));
        Color paper = Palette.onLightScreen().paper();
        int width = (int) (scale * 400);
        int height = (int) (scale * 110);
        View view = new View(scale, picture.margin() * scale, (picture.height() + 4) * scale);
        Consumer<Graphics2D> painting =
                g -> new PiecePainter(g, Palette.onLightScreen(), false).piece(view, picture, 4);
        BufferedImage upright = picture(width, height, paper, painting);
        BufferedImage turned = picture(width, height, paper, g -> {
            g.rotate(Math.PI, width / 2.0, height / 2.0);
            painting.accept(g);
        });
        double off = 0;
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                off += distance(upright.getRGB(x, y), turned.getRGB(width - 1 - x, height - 1 - y));
            }
        }
        // a turned picture lies between pixels and is a little softer
        assertThat(off / width / height).isLessThan(12);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void nothingOfAStepGoesOutsideItsBox(Palette palette) {
        Plan plan = rich();
        Font font = Fonts.load().regular().deriveFont(11f);
        for (Place place : Place.values()) {
            for (BlockPlan block : plan.end(place).blocks()) {
                for (Rectangle box : List.of(new Rectangle(40, 30, 99, 71), new Rectangle(20, 10, 260, 170))) {
                    BufferedImage image = picture(300, 200, new Color(MAGENTA), g -> {
                        new StepPainter(g, palette, font).paint(box, plan, plan.end(place), block);
                        assertThat(g.getClip()).isNull();
                    });
                    int inside = 0;
                    for (int y = 0; y < 200; y++) {
                        for (int x = 0; x < 300; x++) {
                            if ((image.getRGB(x, y) & 0xffffff) != MAGENTA) {
                                if (!box.contains(x, y)) {
                                    fail("%s at %d, %d", block.block().id(), x, y);
                                }
                                inside++;
                            }
                        }
                    }
                    assertThat(inside).as(block.block().id()).isGreaterThan(200);
                }
            }
        }
    }

    @Test
    void everyPieceCanBeDrawnSmallOrLarge() {
        RandomPieces pieces = new RandomPieces(31);
        Font font = Fonts.load().regular().deriveFont(11f);
        for (int i = 0; i < Seeds.of(40); i++) {
            Plan plan = Plan.of(pieces.next());
            PiecePicture picture = PiecePicture.of(plan);
            for (double scale : new double[] {0.3, 2}) {
                BufferedImage image = picture(400, 300, Color.WHITE, g -> {
                    paint(g, picture, Palette.onPaper(), scale);
                    for (Place place : Place.values()) {
                        for (BlockPlan block : plan.end(place).blocks()) {
                            new StepPainter(g, Palette.onPaper(), font)
                                    .paint(new Rectangle(10, 10, 200, 140), plan, plan.end(place), block);
                        }
                    }
                });
                assertThat(Arrays.stream(pixels(image))
                                .filter(pixel -> (pixel & 0xffffff) != 0xffffff)
                                .boxed())
                        .hasSizeGreaterThan(200);
            }
        }
    }

    @Test
    void whatHasntChangedKeepsItsPicture() {
        PiecePicture before = PiecePicture.of(Plan.of(Pieces.panel()));
        Piece piece = Pieces.panel();
        End taller =
                piece.start().replaced(Pieces.band("facing", Use.of(MaterialRole.WEFT), PlainBand.Purpose.FACING, 9));
        PiecePicture after = before.next(Plan.of(piece.withStart(taller)));
        assertThat(after.blocks(Place.START).get("stiff"))
                .isSameAs(before.blocks(Place.START).get("stiff"));
        assertThat(after.blocks(Place.START).get("facing"))
                .isNotSameAs(before.blocks(Place.START).get("facing"));
    }

    @Test
    void theOrderingCordRunsOutRoundBothPosts() {
        Setting setting = WorkedPanel.with(WorkedPanel.cord());
        Posts posts = setting.posts().orElseThrow();
        BlockPicture cord =
                PiecePicture.of(Plan.of(Pieces.panel())).blocks(Place.START).get("ordering");
        double beyond = setting.warp() / 2 + posts.gap() + posts.diameter();
        List<Stretch> all = new ArrayList<>(cord.front(Detail.FINE));
        all.addAll(cord.back(Detail.FINE));
        assertThat(all.stream().mapToDouble(Stretch::lowX).min().orElseThrow())
                .isCloseTo(-beyond - setting.beaten() / 2, within(0.01));
        assertThat(all.stream().mapToDouble(Stretch::highX).max().orElseThrow())
                .isCloseTo(setting.span() + beyond + setting.beaten() / 2, within(0.01));
    }

    /** Every kind of block, with folds once and twice and with a bar, and every finish. */
    static Plan rich() {
        List<Block> blocks = new ArrayList<>(Pieces.hemmed().blocks());
        Use weft = Use.of(MaterialRole.WEFT);
        blocks.add(new HalfHitch(Tag.of("hitch"), weft, 2, 2));
        blocks.add(new Soumak(Tag.of("soumak-4-2"), weft, 2, 4, 2, Lean.S, true));
        blocks.add(new Twining(Tag.of("countered"), Use.of(MaterialRole.WARP_CORD), 2, 2, Lean.S, true));
        blocks.add(new OpenWarp(Tag.of("open"), Length.parse("2 cm")));
        blocks.add(new HemFold(
                Tag.of("twice"),
                Optional.of(Length.parse("8 mm")),
                Optional.of(new Support.RoundBar(Length.parse("12 mm")))));
        for (WarpFinish.Kind kind : WarpFinish.Kind.values()) {
            blocks.add(new WarpFinish(Tag.of(kind.name()), kind, 4, Length.parse("8 cm")));
        }
        blocks.add(
                new KnotRows(Tag.of("lattice"), 3, 4, true, Optional.of(Length.parse("2 cm")), Length.parse("8 cm")));
        blocks.add(new KnotRows(Tag.of("locked"), 2, 2, false, Optional.empty(), Length.parse("8 cm")));
        blocks.add(new TurnedEnds(Tag.of("turned"), 1, true, Side.LEFT, Length.parse("5 cm")));
        blocks.add(new TurnedEnds(Tag.of("turned-3"), 3, false, Side.RIGHT, Length.parse("5 cm")));
        blocks.add(new WovenEdge(Tag.of("woven"), 5, Side.RIGHT, Length.parse("5 cm")));
        blocks.add(new WrappedTassels(Tag.of("tassels"), weft, 5, 14, Length.parse("8 cm")));
        return Plan.of(Pieces.panel().withStart(new End(blocks)));
    }
}

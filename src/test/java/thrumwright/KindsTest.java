package thrumwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Block;
import thrumwright.block.Hemstitching;
import thrumwright.block.MaterialRole;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.StagePicture;
import thrumwright.drawing.step.StepPainter;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.form.KindForms;
import thrumwright.editor.text.CommandTexts;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.StageWords;
import thrumwright.sheet.StepSheet;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Unknown;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomPieces;

/** All that a kind of block has; a kind that lacks something is named, with what it lacks. */
class KindsTest {
    private static final Path TESTS = Path.of("src", "test", "java", "thrumwright");

    private static final Set<Class<?>> RANDOM = random();
    private static final Rectangle BOX = new Rectangle(0, 0, 300, 200);
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 11);

    static Stream<Class<?>> kinds() {
        return leaves(Block.class);
    }

    private static Stream<Class<?>> leaves(Class<?> kind) {
        return kind.isSealed()
                ? Stream.of(kind.getPermittedSubclasses())
                        .flatMap(KindsTest::leaves)
                        .distinct()
                : Stream.of(kind);
    }

    private static Set<Class<?>> random() {
        Set<Class<?>> met = new HashSet<>();
        RandomPieces pieces = new RandomPieces(11);
        for (int i = 0; i < 100; i++) {
            pieces.next().start().blocks().forEach(block -> met.add(block.getClass()));
        }
        return met;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindHasAllThatAKindHas(Class<?> kind) {
        assertThat(lacks(kind, ofKind(kind))).as(kind.getSimpleName()).isEmpty();
    }

    @Test
    void allKindsAreLookedAt() {
        assertThat(leaves(Block.class)).hasSize(16).contains(Hemstitching.class);
    }

    /** What isn't there is missed: no kind and no block of this piece. */
    @Test
    void whatIsLackingIsNamed() {
        Block nowhere = new Hemstitching(Tag.of("kind"), Use.of(MaterialRole.WEFT), 4, 2, Hemstitching.Round.FIRST);

        assertThat(lacks(String.class, List.of()))
                .containsExactly("a worked value", "an entry among the new blocks", "random pieces");
        assertThat(steps(Pieces.panel(), nowhere)).isEmpty();
        assertThat(fileForm(Pieces.panel(), nowhere)).isEmpty();
        assertThat(said(() -> Texts.of(Locale.UK).say("about.nowhere"))).isFalse();
        assertThat(said(() ->
                        new CommandTexts(Locale.UK, "ctrl").get("add-nowhere").text()))
                .isFalse();
    }

    private static List<Block> ofKind(Class<?> kind) {
        return NewBlocks.all(UnitSystem.METRIC).stream()
                .filter(kind::isInstance)
                .toList();
    }

    private static Set<String> lacks(Class<?> kind, List<Block> blocks) {
        Set<String> lacking = new TreeSet<>();
        if (ofKind(kind).isEmpty()) {
            lacking.add("an entry among the new blocks");
        }
        if (!RANDOM.contains(kind)) {
            lacking.add("random pieces");
        }
        if (!workedByHand(kind)) {
            lacking.add("a worked value");
        }
        blocks.forEach(block -> lacking.addAll(lacks(block)));
        return lacking;
    }

    private static List<String> lacks(Block block) {
        return lacks(between(block), block.withTag(Tag.of("kind")));
    }

    private static List<String> lacks(Piece piece, Block block) {
        List<String> lacking = new ArrayList<>(texts(block));
        if (!hasFields(block)) {
            lacking.add("fields");
        }
        if (steps(piece, block).isEmpty()) {
            lacking.add("steps");
        }
        if (!painted(piece, block)) {
            lacking.add("a picture");
        }
        lacking.addAll(stages(piece, block));
        Optional<String> form = fileForm(piece, block);
        if (form.isEmpty()) {
            lacking.add("a file form");
        }
        String called = form.orElse(block.key());
        if (!text(Path.of("docs", "files.md")).contains("| `" + called + "` |")) {
            lacking.add("a line in docs/files.md");
        }
        if (!text(Path.of("docs", "method.md")).toLowerCase(Locale.ROOT).contains(called)) {
            lacking.add("a section in docs/method.md");
        }
        return lacking;
    }

    /** The panel with a block between two bands; a finish goes to the edge by itself. */
    private static Piece between(Block block) {
        Block band = NewBlocks.ofKind("plain-plain", UnitSystem.METRIC);
        return Pieces.panel()
                .withStart(new End(List.of(
                        band.withTag(Tag.of("below")), block.withTag(Tag.of("kind")), band.withTag(Tag.of("above")))));
    }

    private static List<String> texts(Block block) {
        List<String> lacking = new ArrayList<>();
        Texts texts = Texts.of(Locale.UK);
        CommandTexts commands = new CommandTexts(Locale.UK, "ctrl");
        if (!said(() -> texts.words().kind(block))) {
            lacking.add("its name in blocks.properties");
        }
        if (!texts.phrases().has("about." + block.key())) {
            lacking.add("about." + block.key());
        }
        if (!said(() -> commands.get("add-" + block.key()).text())) {
            lacking.add("a command add-" + block.key());
        }
        return lacking;
    }

    private static boolean said(Supplier<String> text) {
        try {
            return !text.get().isBlank();
        } catch (MissingResourceException | IllegalArgumentException | ClassCastException missing) {
            return false;
        }
    }

    private static boolean hasFields(Block block) {
        try {
            return !KindForms.fieldsOf(block).isEmpty();
        } catch (MissingResourceException | ClassCastException unknown) {
            return false;
        }
    }

    /** What the sheet says of it, and nothing if it doesn't know the kind. */
    private static List<String> steps(Piece piece, Block block) {
        try {
            return StepSheet.of(Plan.of(piece), Locale.UK).steps().stream()
                    .filter(step -> step.picture()
                            .filter(picture -> picture.blockId().equals(block.id()))
                            .isPresent())
                    .flatMap(step -> step.sentences().stream())
                    .toList();
        } catch (MissingResourceException | ClassCastException | IllegalArgumentException unknown) {
            return List.of();
        }
    }

    /** Whether each stage of its working is told and painted, and none as another. */
    private static List<String> stages(Piece piece, Block block) {
        Plan plan = Plan.of(piece);
        BlockPlan planned = plan.start().block(block.id()).orElseThrow();
        List<String> lacking = new ArrayList<>();
        Set<String> captions = new HashSet<>();
        Set<Integer> pictures = new HashSet<>();
        try {
            for (StagePicture stage : StagePicture.of(plan, plan.start(), planned, new StageWords(plan, Locale.UK))) {
                captions.add(stage.caption());
                pictures.add(Arrays.hashCode(picture(g -> stage.paint(g, Palette.onPaper(), FONT, BOX))));
            }
        } catch (MissingResourceException | IllegalArgumentException unknown) {
            lacking.add("the words of a stage: " + unknown.getMessage());
        }
        if (captions.size() < 2) {
            lacking.add("stages");
        }
        if (pictures.size() < captions.size()) {
            lacking.add("a picture for each stage");
        }
        return lacking;
    }

    private static int[] picture(Consumer<Graphics2D> painting) {
        BufferedImage image = new BufferedImage(BOX.width, BOX.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fill(BOX);
        painting.accept(g);
        g.dispose();
        return image.getRGB(0, 0, BOX.width, BOX.height, null, 0, BOX.width);
    }

    /** Whether something is painted for its step. */
    private static boolean painted(Piece piece, Block block) {
        BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 300, 200);
        try {
            Plan plan = Plan.of(piece);
            new StepPainter(g, Palette.onPaper(), new Font(Font.SANS_SERIF, Font.PLAIN, 11))
                    .paint(
                            new Rectangle(0, 0, 300, 200),
                            plan,
                            plan.end(Place.START),
                            plan.end(Place.START).block(block.id()).orElseThrow());
        } catch (ClassCastException | IllegalArgumentException | MissingResourceException unknown) {
            return false;
        } finally {
            g.dispose();
        }
        int ink = 0;
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 200; y++) {
                ink += (image.getRGB(x, y) & 0xffffff) == 0xffffff ? 0 : 1;
            }
        }
        return ink > 200;
    }

    /** Its kind in files, if it is written and read back the same. */
    private static Optional<String> fileForm(Piece piece, Block block) {
        try {
            String text = new PieceFile(piece, Unknown.none()).text();
            Matcher kind = Pattern.compile("\"kind\": \"([a-z ]+)\",\\s*\"id\": \"kind\"")
                    .matcher(text);
            boolean same = PieceFile.read(text).piece().start().block("kind").equals(Optional.of(block));
            return same && kind.find() ? Optional.of(kind.group(1)) : Optional.empty();
        } catch (FileProblem | ClassCastException unknown) {
            return Optional.empty();
        }
    }

    /** Whether a test of the geometry has one with a value that somebody worked out. */
    private static boolean workedByHand(Class<?> kind) {
        return Stream.of(
                        "block/WorkedPanelTest",
                        "block/EdgeFinishTest",
                        "plan/PlanTest",
                        "plan/TurningTest",
                        "plan/OpenWarpTest")
                .map(test -> text(TESTS.resolve(test + ".java")))
                .anyMatch(source -> source.contains("new " + kind.getSimpleName() + "(")
                        || source.contains(kind.getSimpleName() + ".once("));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

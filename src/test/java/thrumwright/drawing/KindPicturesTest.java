package thrumwright.drawing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thrumwright.block.Block;
import thrumwright.block.Tag;
import thrumwright.drawing.step.StepPainter;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.testing.Golden;
import thrumwright.testing.Pieces;

/** The pictures of the docs' page on blocks, each of a block between two bands as its step has it. */
class KindPicturesTest {
    private static final Rectangle BOX = new Rectangle(0, 0, 420, 170);

    static List<Block> kinds() {
        return NewBlocks.all(UnitSystem.METRIC);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isThere(Block block) throws IOException {
        Block band = NewBlocks.ofKind("plain-plain", UnitSystem.METRIC);
        Piece piece = Pieces.panel()
                .withStart(new End(List.of(
                        band.withTag(Tag.of("below")), block.withTag(Tag.of("kind")), band.withTag(Tag.of("above")))));
        Plan plan = Plan.of(piece);
        BufferedImage picture = new BufferedImage(BOX.width, BOX.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(Color.WHITE);
        g.fill(BOX);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        new StepPainter(g, Palette.onPaper(), Fonts.load().regular().deriveFont(12f))
                .paint(
                        BOX,
                        plan,
                        plan.end(Place.START),
                        plan.start().block("kind").orElseThrow());
        g.dispose();
        Golden.looksAsItDid(picture, Path.of("docs/pictures/blocks", block.key() + ".png"));
    }
}

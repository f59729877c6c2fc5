package thrumwright.editor.shelf;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.block.Block;
import thrumwright.drawing.Palette;
import thrumwright.drawing.StepPainter;
import thrumwright.editor.edit.NewBlocks;
import thrumwright.editor.edit.Session;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.End;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** Small pictures of the kinds of blocks, drawn from their yarns' paths, in the yarns of the piece at hand. */
final class WarePictures {
    private final Session session;
    private final Supplier<Palette> palette;
    private final Dimension size;
    private final Map<String, BufferedImage> drawn = new HashMap<>();
    private Looks looks;

    /** Whatever all pictures depend on. */
    private record Looks(List<Yarn> yarns, double density, Palette palette) {}

    /** @param size of a picture, in pixels of the window */
    WarePictures(Session session, Supplier<Palette> palette, Dimension size) {
        this.session = session;
        this.palette = palette;
        this.size = size;
    }

    Icon of(Ware ware) {
        return new Picture(ware);
    }

    private final class Picture implements Icon {
        private final Ware ware;

        Picture(Ware ware) {
            this.ware = ware;
        }

        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics;
            double density = g.getTransform().getScaleX();
            AffineTransform place = AffineTransform.getTranslateInstance(x, y);
            place.scale(1 / density, 1 / density);
            g.drawImage(image(ware, density), place, null);
        }

        @Override
        public int getIconWidth() {
            return size.width;
        }

        @Override
        public int getIconHeight() {
            return size.height;
        }
    }

    /** Whether the pictures were drawn in yarns that the piece doesn't use any more. */
    boolean outdated() {
        return looks != null && !looks.yarns().equals(yarns());
    }

    private List<Yarn> yarns() {
        Piece piece = session.piece();
        return List.of(
                piece.warpYarn(), piece.yarn(piece.cordId()), piece.yarn(piece.wasteId()), piece.stripe(Place.START));
    }

    private BufferedImage image(Ware ware, double density) {
        Looks now = new Looks(yarns(), density, palette.get());
        if (!Objects.equals(looks, now)) {
            looks = now;
            drawn.clear();
        }
        return drawn.computeIfAbsent(ware.key(), key -> draw(ware, density));
    }

    private BufferedImage draw(Ware ware, double density) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(size.width * density),
                (int) Math.ceil(size.height * density),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.scale(density, density);
        Rectangle2D box = new Rectangle2D.Double(0, 0, size.width, size.height);
        Color paper = palette.get().paper();
        g.setColor(paper);
        g.fill(box);
        Plan plan = Plan.of(sample(ware.block()));
        Font font = UIManager.getFont("Label.font");
        plan.start()
                .block(ware.block().id())
                .ifPresent(block -> new StepPainter(g, palette.get(), font.deriveFont(font.getSize2D() - 3))
                        .kind(box, plan, plan.start(), block));
        g.dispose();
        return image;
    }

    /** The piece with that block alone on a facing, so that a fold has something to fold. */
    private Piece sample(Block block) {
        Block facing = NewBlocks.ofKind("plain-facing", UnitSystem.METRIC);
        Block below = facing.withTag(facing.tag().withId("below"));
        return session.piece()
                .withStart(new End(List.of(below, block)))
                .withTop(new Top.FollowsStart(Set.of(below.id(), block.id())));
    }
}

package thrumwright.editor.shelf;

import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.Icon;
import javax.swing.UIManager;
import thrumwright.block.Block;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.StepPainter;
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
    private final Map<String, Drawn> drawn = new HashMap<>();
    private final Set<String> wanted = new HashSet<>();
    private final Runnable ready;

    /** Whatever all pictures depend on. */
    private record Looks(List<Yarn> yarns, double density, Palette palette) {}

    private record Drawn(Looks looks, BufferedImage image) {}

    /**
     * @param size of a picture, in pixels of the window
     * @param ready told of every picture that wasn't there yet when it was to be painted, as soon as it is
     */
    WarePictures(Session session, Supplier<Palette> palette, Dimension size, Runnable ready) {
        this.ready = ready;
        this.session = session;
        this.palette = palette;
        this.size = size;
    }

    Icon of(Ware ware) {
        return new WareIcon(ware);
    }

    private final class WareIcon implements Icon {
        private final Ware ware;

        WareIcon(Ware ware) {
            this.ware = ware;
        }

        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics;
            double density = g.getTransform().getScaleX();
            Drawn known = drawn.get(ware.key());
            if (known == null || !known.looks().equals(looks(density))) {
                want(ware, density);
            }
            if (known != null) {
                AffineTransform place = AffineTransform.getTranslateInstance(x, y);
                place.scale(1 / known.looks().density(), 1 / known.looks().density());
                g.drawImage(known.image(), place, null);
            }
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
        List<Yarn> now = yarns();
        return drawn.values().stream().anyMatch(known -> !known.looks().yarns().equals(now));
    }

    /** Each takes a while, so each is drawn by an event of its own; until then the one before is seen, if there is one. */
    private void want(Ware ware, double density) {
        if (wanted.add(ware.key())) {
            EventQueue.invokeLater(() -> {
                wanted.remove(ware.key());
                drawn.put(ware.key(), new Drawn(looks(density), draw(ware, density)));
                ready.run();
            });
        }
    }

    private Looks looks(double density) {
        return new Looks(yarns(), density, palette.get());
    }

    private List<Yarn> yarns() {
        Piece piece = session.piece();
        return List.of(
                piece.warpYarn(), piece.yarn(piece.cordId()), piece.yarn(piece.wasteId()), piece.stripe(Place.START));
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

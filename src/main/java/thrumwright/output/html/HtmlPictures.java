package thrumwright.output.html;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.drawing.step.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Part;
import thrumwright.output.page.PngFile;
import thrumwright.output.page.Type;
import thrumwright.output.part.EndPart;
import thrumwright.output.part.PiecePart;
import thrumwright.output.part.SlipPicture;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/**
 * The drawings of a sheet for a browser, half as fine again as a usual screen shows them, so that they print well; if there are very
 * many, as fine as the screen shows them.
 */
final class HtmlPictures {
    private static final double FINENESS = 1.5;

    /** With more steps than that a finer page would be too large for a browser. */
    private static final int FINE_STEPS = 60;

    private static final double PAGE = 720;
    private static final double HIGHEST = 380;
    private static final double STEP = 380;
    private static final double STEP_HEIGHT = 250;
    private static final double SLIP = 182;
    private static final double SLIP_HEIGHT = 131;

    private final Plan plan;
    private final Palette palette;
    private final Type type;
    private final PiecePicture picture;
    private final boolean many;
    private final double fineness;

    /** @param steps how many are drawn on the page in all, 0 or more */
    HtmlPictures(Plan plan, Fonts fonts, Palette palette, int steps) {
        this.plan = plan;
        this.palette = palette;
        this.type = new Type(fonts, PageSetup.USUAL_DISTANCE, 1);
        this.picture = PiecePicture.of(plan);
        this.many = steps > FINE_STEPS;
        this.fineness = many ? 1 : FINENESS;
    }

    /** Whether the page has very many steps. */
    boolean many() {
        return many;
    }

    Html.Embedded piece() {
        return part(new PiecePart(picture, palette, HIGHEST));
    }

    Html.Embedded end(Place place, Map<String, Integer> numbers) {
        return part(new EndPart(picture, place, numbers, type, palette, HIGHEST));
    }

    Html.Embedded step(EndPlan end, BlockPlan block) {
        Rectangle2D box = new Rectangle2D.Double(0, 0, STEP, STEP_HEIGHT);
        return draw(STEP, STEP_HEIGHT, g -> new StepPainter(g, palette, type.body()).paint(box, plan, end, block));
    }

    List<SlipPicture> slips(EndPlan end, BlockPlan block, Phrases phrases) {
        return SlipPicture.both(plan, end, block, phrases, type, palette);
    }

    Html.Embedded draw(SlipPicture slip) {
        Rectangle2D box = new Rectangle2D.Double(0.5, 0.5, SLIP - 1, SLIP_HEIGHT - 1);
        return draw(SLIP, SLIP_HEIGHT, g -> slip.paint(g, box));
    }

    private Html.Embedded part(Part part) {
        return draw(PAGE, part.height(PAGE), g -> part.paint(g, 0, 0, PAGE));
    }

    private Html.Embedded draw(double width, double height, Consumer<Graphics2D> painting) {
        int wide = (int) Math.ceil(width);
        int high = (int) Math.ceil(height);
        BufferedImage image =
                new BufferedImage((int) (wide * fineness), (int) (high * fineness), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        PngFile.smooth(g);
        g.scale(fineness, fineness);
        painting.accept(g);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PngFile.write(image, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Html.Embedded(out.toByteArray(), wide, high);
    }
}

package thrumwright.output.html;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
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
import thrumwright.output.page.Type;
import thrumwright.output.part.EndPart;
import thrumwright.output.part.PiecePart;
import thrumwright.output.part.SlipPicture;
import thrumwright.output.svg.SvgCanvas;
import thrumwright.output.svg.SvgSymbols;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;

/** The drawings of a sheet for a browser. */
final class HtmlPictures {
    /** CSS pixels to a unit of the drawing: yarns are drawn as finely as on paper, and enlarged. */
    private static final double ENLARGED = 1.5;

    private static final double PAGE = 480;
    private static final double HIGHEST = 253;
    private static final double STEP = 253;
    private static final double STEP_HEIGHT = 167;
    private static final double SLIP = 121;
    private static final double SLIP_HEIGHT = 87;

    private final Plan plan;
    private final Palette palette;
    private final SvgSymbols symbols;
    private final Type type;
    private final PiecePicture picture;

    /** @param symbols of all drawings on the page */
    HtmlPictures(Plan plan, Fonts fonts, Palette palette, SvgSymbols symbols) {
        this.plan = plan;
        this.palette = palette;
        this.symbols = symbols;
        this.type = new Type(fonts, PageSetup.USUAL_DISTANCE, 1 / ENLARGED);
        this.picture = PiecePicture.of(plan);
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
        return new Html.Embedded(SvgCanvas.painted(symbols, wide, high, painting), wide, high, ENLARGED);
    }
}

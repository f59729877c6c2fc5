package thrumwright.output.html;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.drawing.piece.PiecePicture;
import thrumwright.drawing.piece.SewnPicture;
import thrumwright.drawing.step.StepPainter;
import thrumwright.measure.Phrases;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Part;
import thrumwright.output.page.Type;
import thrumwright.output.part.EndPart;
import thrumwright.output.part.MarkedBarPart;
import thrumwright.output.part.PartMaker;
import thrumwright.output.part.PiecePart;
import thrumwright.output.part.SlipPicture;
import thrumwright.output.part.WarpWayPart;
import thrumwright.output.svg.SvgCanvas;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.Sewn;

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
    private final Html html;
    private final Type type;
    private final PiecePicture picture;

    /** @param html the page that they are drawn on */
    HtmlPictures(Plan plan, Fonts fonts, Palette palette, Html html) {
        this.plan = plan;
        this.palette = palette;
        this.html = html;
        this.type = new Type(fonts, PageSetup.USUAL_DISTANCE, 1 / ENLARGED);
        this.picture = PiecePicture.of(plan);
    }

    Html.Embedded piece() {
        return part(whole("piece"), new PiecePart(picture, palette, HIGHEST));
    }

    /** The way of the warp. */
    Html.Embedded way(Locale locale) {
        return part(whole("way"), new WarpWayPart(plan.piece(), warping(locale)));
    }

    /** The bar with its marks, between which ends are counted. */
    Html.Embedded marked(Locale locale) {
        return part(whole("marked"), new MarkedBarPart(plan.piece(), warping(locale)));
    }

    private PartMaker warping(Locale locale) {
        return new PartMaker(type, palette, Phrases.of("thrumwright.sheet.warping", locale));
    }

    Html.Embedded end(Place place, Map<String, Integer> numbers) {
        return part(
                new Html.Drawn(html.number(plan), "end", Optional.of(place), "", 0),
                new EndPart(picture, place, numbers, type, palette, HIGHEST));
    }

    Html.Embedded step(EndPlan end, BlockPlan block) {
        Rectangle2D box = new Rectangle2D.Double(0, 0, STEP, STEP_HEIGHT);
        Html.Drawn what = of("step", StepPainter.likeness(plan, end, block), end, block, 0);
        return draw(
                what, STEP, STEP_HEIGHT, g -> new StepPainter(g, palette, type.body()).paint(box, plan, end, block));
    }

    /** What is sewn to the piece, or it to something. */
    Html.Embedded sewn(Sewn sewn, String says) {
        Rectangle2D box = new Rectangle2D.Double(0, 0, STEP, STEP_HEIGHT);
        Html.Drawn what = whole("sewn-" + sewn);
        return draw(
                what, STEP, STEP_HEIGHT, g -> new SewnPicture(plan, sewn, says).paint(g, palette, type.body(), box));
    }

    List<SlipPicture> slips(EndPlan end, BlockPlan block, Phrases phrases) {
        return SlipPicture.both(plan, end, block, phrases, type, palette);
    }

    /** @param index which of {@link #slips} it is */
    Html.Embedded slip(EndPlan end, BlockPlan block, int index, SlipPicture slip) {
        Html.Drawn what = of("slip", slip.likeness(), end, block, index);
        Rectangle2D box = new Rectangle2D.Double(0.5, 0.5, SLIP - 1, SLIP_HEIGHT - 1);
        return draw(what, SLIP, SLIP_HEIGHT, g -> slip.paint(g, box));
    }

    private Html.Drawn whole(String sort) {
        return new Html.Drawn(html.number(plan), sort, Optional.empty(), "", 0);
    }

    private Html.Drawn of(String sort, Optional<Object> likeness, EndPlan end, BlockPlan block, int index) {
        Object from = likeness.orElseGet(() -> html.number(plan));
        return new Html.Drawn(
                from, sort, Optional.of(end.place()), block.block().id(), index);
    }

    private Html.Embedded part(Html.Drawn what, Part part) {
        return draw(what, PAGE, part.height(PAGE), g -> part.paint(g, 0, 0, PAGE));
    }

    private Html.Embedded draw(Html.Drawn what, double width, double height, Consumer<Graphics2D> painting) {
        int wide = (int) Math.ceil(width);
        int high = (int) Math.ceil(height);
        String drawing = html.again(what).orElseGet(() -> SvgCanvas.painted(html.symbols(), wide, high, painting));
        return new Html.Embedded(what, drawing, wide, high, ENLARGED);
    }
}

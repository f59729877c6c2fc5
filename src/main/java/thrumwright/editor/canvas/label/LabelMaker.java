package thrumwright.editor.canvas.label;

import java.awt.Font;
import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.editor.canvas.seen.BlockSpot;
import thrumwright.editor.canvas.seen.CanvasMap;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;

/**
 * Makes labels and puts them in their places.
 *
 * @param measured how large letters are
 */
public record LabelMaker(Texts texts, LabelSizes sizes, LabelFonts fonts, Function<Font, FontMetrics> measured) {
    /** Above the first and below the last label, pixels. */
    private static final int EDGE = 4;

    /**
     * All labels of a canvas: the design's in the middle, those of the top one above the other on it, those of the start one
     * below the other under it. So no label moves for what becomes of a block.
     *
     * @param height of the list, pixels
     * @param room that the list shares with the picture, pixels
     * @param before how wide columns are at least
     */
    public LabelList list(CanvasMap map, int height, int room, LabelWidths before) {
        int rowHeight = measured.apply(fonts.plain()).getHeight() + 4;
        List<LabelRow> rows = new ArrayList<>();
        int top = (int)
                map.spots().stream().filter(spot -> spot.place() == Place.TOP).count();
        int all = map.spots().size() + 1;
        double high = Math.max(height, all * rowHeight + 2.0 * EDGE);
        double least = EDGE + (top + 0.5) * rowHeight;
        double most = high - EDGE - (all - top - 0.5) * rowHeight;
        double middle = Math.round(Math.max(least, Math.min(high / 2, most)));
        for (int i = 0; i < all - 1; i++) {
            rows.add(row(map, map.spots().get(i)).at(middle + (i < top ? i - top : i - top + 1) * rowHeight));
        }
        rows.add(top, design(map).at(middle));
        return new LabelList(rows, widths(rows).widest(before), LabelWidths.COLUMNS, rowHeight, sizes).narrowed(room);
    }

    private LabelRow row(CanvasMap map, BlockSpot spot) {
        BlockWording wording = BlockWording.of(map.picture().plan(), spot.place(), spot.plan(), texts);
        return row(Optional.of(spot), wording, spot.middle());
    }

    private LabelRow design(CanvasMap map) {
        Plan plan = map.picture().plan();
        String height =
                plan.piece().shown().height(plan.piece().design().height().mm());
        return row(Optional.empty(), new BlockWording(texts.say("label.design"), "", height, ""), map.designMiddle());
    }

    private LabelRow row(Optional<BlockSpot> spot, BlockWording wording, double middle) {
        return new LabelRow(spot, wording, widths(wording), middle, middle);
    }

    LabelWidths widths(BlockWording wording) {
        return LabelWidths.of(wording, fonts, measured);
    }

    private LabelWidths widths(List<LabelRow> rows) {
        LabelWidths titles = widths(titles());
        LabelWidths widest = titles.withName(sizes.leastName()).widest(usual());
        for (LabelRow row : rows) {
            widest = widest.widest(row.widths());
        }
        return widest.withName(Math.min(sizes.mostName(), widest.name()));
    }

    /** Numbers of the usual size, so that the columns needn't grow when one becomes a little longer. */
    private LabelWidths usual() {
        return widths(new BlockWording(
                "", texts.say("label.usual.amount"), texts.say("label.usual.height"), texts.say("label.usual.cut")));
    }

    BlockWording titles() {
        return new BlockWording(
                texts.say("label.title.block"),
                texts.say("label.title.amount"),
                texts.say("label.title.height"),
                texts.say("label.title.cut"));
    }
}

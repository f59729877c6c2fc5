package thrumwright.editor.canvas.label;

import java.awt.Font;
import java.awt.FontMetrics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thrumwright.drawing.Spread;
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
    /**
     * All labels of a canvas.
     *
     * @param height of the canvas, pixels
     * @param room that the list shares with the picture, pixels
     */
    public LabelList list(CanvasMap map, int height, int room) {
        int rowHeight = measured.apply(fonts.plain()).getHeight() + 4;
        List<LabelRow> wanted = wanted(map);
        double half = rowHeight / 2.0 + 2;
        double[] placed =
                Spread.apart(wanted.stream().mapToDouble(LabelRow::target).toArray(), rowHeight, half, height - half);
        List<LabelRow> rows = new ArrayList<>();
        for (int i = 0; i < placed.length; i++) {
            rows.add(wanted.get(i).at(placed[i]));
        }
        return new LabelList(rows, widths(rows), LabelWidths.COLUMNS, rowHeight, sizes).narrowed(room);
    }

    /** All rows from above, each beside what it is about; they may still lie over each other. */
    private List<LabelRow> wanted(CanvasMap map) {
        List<LabelRow> wanted = new ArrayList<>();
        for (BlockSpot spot : map.spots()) {
            BlockWording wording = BlockWording.of(map.picture().plan(), spot.place(), spot.plan(), texts);
            wanted.add(row(Optional.of(spot), wording, spot.middle()));
        }
        long above = map.spots().stream()
                .takeWhile(spot -> spot.place() == Place.TOP)
                .count();
        wanted.add((int) above, design(map));
        return wanted;
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
        LabelWidths widest = titles.withName(sizes.leastName());
        for (LabelRow row : rows) {
            widest = widest.widest(row.widths());
        }
        return widest.withName(Math.min(sizes.mostName(), widest.name()));
    }

    BlockWording titles() {
        return new BlockWording(
                texts.say("label.title.block"),
                texts.say("label.title.amount"),
                texts.say("label.title.height"),
                texts.say("label.title.cut"));
    }
}

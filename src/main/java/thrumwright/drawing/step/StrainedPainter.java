package thrumwright.drawing.step;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import thrumwright.block.Setting;
import thrumwright.drawing.Palette;
import thrumwright.drawing.View;
import thrumwright.drawing.yarn.BlockPicture;
import thrumwright.drawing.yarn.ClothPainter;
import thrumwright.drawing.yarn.Detail;
import thrumwright.drawing.yarn.Face;
import thrumwright.drawing.yarn.PostPen;
import thrumwright.drawing.yarn.Stretch;
import thrumwright.drawing.yarn.YarnPen;
import thrumwright.yarn.Yarn;

/** A block on warp ends that don't stand as they should, by the strands that it has where they do. */
record StrainedPainter(Graphics2D g, Palette palette) {
    /** Points of a warp end for each height of the block. */
    private static final int STEPS = 12;

    /** @param view with y = 0 at the block's lower edge */
    void paint(View view, BlockPicture picture, Yarn warp, Strain strain, double low, double high) {
        Setting setting = picture.setting();
        ClothPainter cloth = new ClothPainter(g, palette, true, Face.FRONT);
        cloth.behind(view, picture).drawTogether(strained(picture.back(Detail.FINE), picture, strain));
        setting.posts().ifPresent(posts -> new PostPen(g, view, palette).draw(setting, posts, low, high));
        new YarnPen(g, view, palette.yarn(warp.colour()), warp.plies(), Face.FRONT)
                .drawTogether(ends(picture, strain, low, high));
        YarnPen pen = cloth.inFront(view, picture);
        pen.drawTogether(strained(picture.front(Detail.FINE), picture, strain));
        pen.drawTogether(picture.ties());
    }

    private static List<Stretch> strained(List<Stretch> stretches, BlockPicture picture, Strain strain) {
        double span = picture.setting().span();
        return stretches.stream()
                .map(stretch -> strain.strained(stretch, span, picture.height()))
                .toList();
    }

    private static List<Stretch> ends(BlockPicture picture, Strain strain, double low, double high) {
        Setting setting = picture.setting();
        int points = (int) Math.min(400, Math.ceil((high - low) / picture.height() * STEPS) + 2);
        List<Stretch> ends = new ArrayList<>();
        for (int end = 0; end < setting.ends(); end++) {
            double[] x = new double[points];
            double[] y = new double[points];
            for (int i = 0; i < points; i++) {
                x[i] = end * setting.spacing();
                y[i] = low + (high - low) * i / (points - 1);
            }
            ends.add(strain.strained(Stretch.loose(x, y, setting.warp()), setting.span(), picture.height()));
        }
        return ends;
    }
}

package thrumwright.editor.form;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import thrumwright.yarn.Colour;

/** Colours that follow from others. */
final class Shades {
    /** How far towards white, or below 0 towards black, each shade is, as a share. */
    private static final double[] STEPS = {0.66, 0.44, 0.22, 0, -0.22, -0.44, -0.66};

    /** So many pixels to each side count when a colour is taken from a picture, since yarn is never even. */
    private static final int AROUND = 2;

    private Shades() {}

    /** Seven of one hue, from the lightest to the darkest, with the colour itself in the middle. */
    static List<Colour> of(Colour colour) {
        List<Colour> all = new ArrayList<>();
        for (double step : STEPS) {
            int to = step > 0 ? 255 : 0;
            int red = mixed(colour.rgb() >> 16 & 255, to, Math.abs(step));
            int green = mixed(colour.rgb() >> 8 & 255, to, Math.abs(step));
            int blue = mixed(colour.rgb() & 255, to, Math.abs(step));
            all.add(new Colour(red << 16 | green << 8 | blue));
        }
        return all;
    }

    private static int mixed(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    /** What a picture shows round a point of it, pixels from its upper left corner. */
    static Colour at(BufferedImage picture, int x, int y) {
        long[] sum = new long[4];
        for (int i = x - AROUND; i <= x + AROUND; i++) {
            for (int j = y - AROUND; j <= y + AROUND; j++) {
                if (i >= 0 && j >= 0 && i < picture.getWidth() && j < picture.getHeight()) {
                    int rgb = picture.getRGB(i, j);
                    sum[0] += rgb >> 16 & 255;
                    sum[1] += rgb >> 8 & 255;
                    sum[2] += rgb & 255;
                    sum[3]++;
                }
            }
        }
        long count = Math.max(1, sum[3]);
        return new Colour((int) (sum[0] / count << 16 | sum[1] / count << 8 | sum[2] / count));
    }
}

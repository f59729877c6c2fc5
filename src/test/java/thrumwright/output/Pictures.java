package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** Compares pictures. */
public final class Pictures {
    private Pictures() {}

    /** White paper as large as another picture. */
    public static BufferedImage blank(BufferedImage like) {
        return blank(like.getWidth(), like.getHeight());
    }

    public static BufferedImage blank(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }

    /** Mean difference of all dots and colours, 0 to 1, of pictures whose sizes are rounded from the same. */
    public static double difference(BufferedImage one, BufferedImage other) {
        int width = Math.min(one.getWidth(), other.getWidth());
        int height = Math.min(one.getHeight(), other.getHeight());
        assertThat(Math.max(one.getWidth(), other.getWidth())).isLessThanOrEqualTo(width + 1);
        assertThat(Math.max(one.getHeight(), other.getHeight())).isLessThanOrEqualTo(height + 1);
        double sum = 0;
        for (int y = 0; y < height; y++) {
            int[] ones = row(one, y);
            int[] others = row(other, y);
            for (int x = 0; x < width; x++) {
                sum += difference(ones[x], others[x]);
            }
        }
        return sum / (255.0 * 3 * width * height);
    }

    /** A row of dots as red, green and blue, without asking for each by itself where they lie so anyway. */
    public static int[] row(BufferedImage image, int y) {
        int width = image.getWidth();
        return image.getType() == BufferedImage.TYPE_INT_RGB
                ? (int[]) image.getRaster().getDataElements(0, y, width, 1, new int[width])
                : image.getRGB(0, y, width, 1, null, 0, width);
    }

    private static int difference(int one, int other) {
        return one == other
                ? 0
                : Math.abs((one & 255) - (other & 255))
                        + Math.abs((one >> 8 & 255) - (other >> 8 & 255))
                        + Math.abs((one >> 16 & 255) - (other >> 16 & 255));
    }
}

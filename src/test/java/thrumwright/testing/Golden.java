package thrumwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import thrumwright.output.Pictures;

/**
 * Pictures against pictures that somebody looked at and liked. Run with {@code -Dgolden.accept=true} to take the new ones;
 * look at them before you commit. What differs is drawn into {@code target/golden}.
 */
public final class Golden {
    /** Fonts are smoothed a little differently from one Java to another. */
    private static final int SAME_SHADE = 56;

    private static final double MAY_DIFFER = 0.01;

    private Golden() {}

    /** Holds a picture against the one in a file. */
    public static void looksAsItDid(BufferedImage picture, Path golden) throws IOException {
        if (Boolean.getBoolean("golden.accept")) {
            Files.createDirectories(Objects.requireNonNull(golden.getParent()));
            ImageIO.write(picture, "png", golden.toFile());
        }
        BufferedImage liked = ImageIO.read(golden.toFile());
        assertThat(picture.getWidth()).as(golden.toString()).isEqualTo(liked.getWidth());
        assertThat(picture.getHeight()).as(golden.toString()).isEqualTo(liked.getHeight());
        assertThat(differing(picture, liked, String.valueOf(golden.getFileName())))
                .as(golden.toString())
                .isLessThan(MAY_DIFFER);
    }

    /** The share of pixels that differ by more than a shade. */
    private static double differing(BufferedImage picture, BufferedImage liked, String name) throws IOException {
        BufferedImage difference =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        int differing = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            int[] seen = Pictures.row(picture, y);
            int[] wanted = Pictures.row(liked, y);
            for (int x = 0; x < picture.getWidth(); x++) {
                boolean same = shade(seen[x], wanted[x]) <= SAME_SHADE;
                differing += same ? 0 : 1;
                seen[x] = same ? 0xffffff : 0xcc0000;
            }
            difference.setRGB(0, y, picture.getWidth(), 1, seen, 0, picture.getWidth());
        }
        if (differing > 0) {
            File folder = Files.createDirectories(Path.of("target/golden")).toFile();
            ImageIO.write(difference, "png", new File(folder, name));
        }
        return (double) differing / picture.getWidth() / picture.getHeight();
    }

    private static int shade(int one, int other) {
        int most = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            most = Math.max(most, Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)));
        }
        return most;
    }
}

import com.formdev.flatlaf.extras.FlatSVGIcon;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * The program's icon and its files' icon as each system wants them: PNG in all sizes, ICO for Windows, ICNS for macOS.
 * {@code java -cp thrumwright.jar Icons.java FOLDER}
 */
final class Icons {
    private static final int[] SIZES = {16, 22, 24, 32, 48, 64, 128, 256, 512};
    /** What an ICNS file calls a PNG of that many pixels. */
    private static final Map<Integer, String> APPLE = Map.of(16, "icp4", 32, "icp5", 64, "icp6", 128, "ic07", 256, "ic08", 512, "ic09");

    private Icons() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        for (String name : new String[] {"thrumwright", "thrumwright-file"}) {
            Map<Integer, byte[]> pictures = new LinkedHashMap<>();
            for (int size : SIZES) {
                pictures.put(size, png(name, size));
                Path file = folder.resolve(size + "x" + size).resolve(name + ".png");
                Files.createDirectories(file.getParent());
                Files.write(file, pictures.get(size));
            }
            Files.write(folder.resolve(name + ".ico"), ico(pictures));
            Files.write(folder.resolve(name + ".icns"), icns(pictures));
        }
    }

    private static byte[] png(String name, int size) throws IOException {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        new FlatSVGIcon("thrumwright/editor/icons/" + name + ".svg", size, size).paintIcon(null, graphics, 0, 0);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    /** A list of pictures, then the pictures; a size of 256 is written as 0, and larger ones don't exist. */
    private static byte[] ico(Map<Integer, byte[]> pictures) {
        Map<Integer, byte[]> kept = new LinkedHashMap<>(pictures);
        kept.remove(512);
        int at = 6 + 16 * kept.size();
        ByteBuffer out = ByteBuffer.allocate(at + kept.values().stream().mapToInt(each -> each.length).sum())
                .order(ByteOrder.LITTLE_ENDIAN)
                .putShort((short) 0)
                .putShort((short) 1)
                .putShort((short) kept.size());
        for (Map.Entry<Integer, byte[]> each : kept.entrySet()) {
            byte side = each.getKey().byteValue();
            out.put(side).put(side).putShort((short) 0).putShort((short) 1).putShort((short) 32);
            out.putInt(each.getValue().length).putInt(at);
            at += each.getValue().length;
        }
        kept.values().forEach(out::put);
        return out.array();
    }

    private static byte[] icns(Map<Integer, byte[]> pictures) throws IOException {
        ByteArrayOutputStream inside = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(inside);
        for (Map.Entry<Integer, byte[]> each : pictures.entrySet()) {
            if (APPLE.containsKey(each.getKey())) {
                data.writeBytes(APPLE.get(each.getKey()));
                data.writeInt(8 + each.getValue().length);
                data.write(each.getValue());
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DataOutputStream whole = new DataOutputStream(out);
        whole.writeBytes("icns");
        whole.writeInt(8 + inside.size());
        inside.writeTo(whole);
        return out.toByteArray();
    }
}

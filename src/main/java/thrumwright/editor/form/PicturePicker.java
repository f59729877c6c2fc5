package thrumwright.editor.form;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.ImageIcon;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.FileAsked;
import thrumwright.editor.look.Modal;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.yarn.Colour;

/** Takes a colour from a picture, such as a photograph of the yarn. */
record PicturePicker(Component parent, Texts texts) {
    private static final int MOST = 480;

    /** @param taken told of the colour that was clicked */
    void ask(Consumer<Colour> taken) {
        FileAsked.Kind kind = FileAsked.Kind.of(texts.say("colour.pictures"), "png", "jpg", "jpeg", "gif", "bmp");
        FileAsked.of("pictures", texts.say("colour.picture.open"), Optional.empty(), kind)
                .dialog()
                .open(parent)
                .ifPresent(chosen -> open(chosen.path().toFile(), taken));
    }

    private void open(File file, Consumer<Colour> taken) {
        try {
            BufferedImage picture = ImageIO.read(file);
            if (picture == null) {
                refuse(file);
            } else {
                show(smaller(picture), taken);
            }
        } catch (IOException e) {
            refuse(file);
        }
    }

    private void refuse(File file) {
        JOptionPane.showMessageDialog(
                parent,
                texts.say("colour.picture.not", Map.of("file", file.getName())),
                texts.say("colour.picture.open"),
                JOptionPane.WARNING_MESSAGE);
    }

    private static BufferedImage smaller(BufferedImage picture) {
        double by = Math.min(1, (double) Pixels.of(MOST) / Math.max(picture.getWidth(), picture.getHeight()));
        int width = Math.max(1, (int) (picture.getWidth() * by));
        int height = Math.max(1, (int) (picture.getHeight() * by));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(picture, 0, 0, width, height, null);
        g.dispose();
        return small;
    }

    private void show(BufferedImage picture, Consumer<Colour> taken) {
        Modal<Colour> modal = new Modal<>(parent, "picture", texts.say("colour.picture.open"));
        JLabel shown = new JLabel(new ImageIcon(picture));
        shown.setName("picture.shown");
        shown.setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
        shown.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                modal.answer(Shades.at(picture, event.getX(), event.getY()));
            }
        });
        JButton cancel = new JButton(texts.say("colour.cancel"));
        cancel.addActionListener(event -> modal.close());
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fillx"));
        panel.add(new Prose(texts.say("colour.picture.how")), "growx, wmin 200");
        panel.add(shown, "w " + picture.getWidth() + "!, h " + picture.getHeight() + "!");
        panel.add(cancel, "gapbefore push");
        modal.fill(panel, cancel);
        modal.ask().ifPresent(taken);
    }
}

package thrumwright.editor.shelf;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import thrumwright.editor.look.Pixels;
import thrumwright.editor.look.Prose;

/** A kind of block on the shelf: its picture, its name, and what it does. */
final class WareCell extends JPanel implements ListCellRenderer<Ware> {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 10;

    private final Dimension size = pictureSize();
    private final Insets round = Pixels.of(new Insets(5, 8, 5, 8));
    private final transient WarePictures pictures;
    private final JLabel picture = new JLabel();
    private final JLabel name = new JLabel();
    private final Prose about = new Prose("");

    WareCell(WarePictures pictures) {
        super(new BorderLayout(Pixels.of(GAP), 0));
        this.pictures = pictures;
        picture.setVerticalAlignment(JLabel.TOP);
        JPanel words = new JPanel(new BorderLayout());
        words.setOpaque(false);
        words.add(name, BorderLayout.NORTH);
        words.add(about);
        add(picture, BorderLayout.WEST);
        add(words);
        setBorder(BorderFactory.createEmptyBorder(round.top, round.left, round.bottom, round.right));
    }

    /** Size of the picture in pixels of the window. */
    static Dimension pictureSize() {
        return Pixels.of(new Dimension(68, 48));
    }

    /** In a list a cell is laid out each time it is painted; only the layout is wanted, not to look for the pointer as well. */
    @Override
    public void validate() {
        synchronized (getTreeLock()) {
            validateTree();
        }
    }

    Icon picture(Ware ware) {
        return pictures.of(ware);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Ware> list, Ware ware, int index, boolean selected, boolean focused) {
        setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        picture.setIcon(pictures.of(ware));
        name.setFont(UIManager.getFont("semibold.font"));
        name.setText(ware.name());
        name.setForeground(selected ? list.getSelectionForeground() : list.getForeground());
        Font plain = UIManager.getFont("Label.font");
        about.setFont(plain.deriveFont(plain.getSize2D() - 1));
        about.setForeground(selected ? list.getSelectionForeground() : UIManager.getColor("Thrumwright.quiet"));
        about.setText(ware.about());
        picture.getAccessibleContext().setAccessibleName(ware.name());
        getAccessibleContext().setAccessibleName(ware.name());
        getAccessibleContext().setAccessibleDescription(ware.about());
        int width = list.getWidth() - round.left - round.right - size.width - Pixels.of(GAP);
        about.setSize(Math.max(60, width), Short.MAX_VALUE);
        return this;
    }
}

package thrumwright.editor.view;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.comparison.BlockPair;
import thrumwright.plan.finding.Severity;

/** What is said of a block of the start and its partner in the top. */
final class PairWords extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JButton name;
    private boolean selected;
    private final transient List<Prose> sentences = new ArrayList<>();
    private transient BlockPair pair;
    /** For which width the height was last worked out, pixels; 0: for none. */
    private Dimension measured = new Dimension();

    /**
     * All that is said of a pair.
     *
     * @param place where its block is shown
     * @param said a sentence for each difference
     */
    record Told(String id, String name, Place place, List<BlockPair.Aspect> differences, List<String> said) {
        static Told of(BlockPair pair, List<String> said, Texts texts) {
            Place place = pair.start().isPresent() ? Place.START : Place.TOP;
            String name = texts.words().name(pair.block());
            return new Told(pair.block().id(), name, place, List.copyOf(pair.differences()), List.copyOf(said));
        }
    }

    PairWords(Told told, Texts texts, Session session) {
        super(new MigLayout("insets 1 6 3 0, wrap 2, fillx, gapy 1", "[]6[grow, fill, 40::]"));
        setOpaque(false);
        setName("pair." + told.id());
        name = new JButton(told.name());
        name.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        name.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font; margin: 1,2,1,2");
        name.setToolTipText(texts.say(
                "ends.go", Map.of("block", told.name(), "place", texts.words().place(told.place()))));
        name.addActionListener(event -> session.select(Selection.of(told.place(), told.id())));
        add(name, "span 2, growx 0, wmin 0");
        int at = 0;
        for (BlockPair.Aspect aspect : told.differences()) {
            line(new Mark(weight(aspect)), told.said().get(at++));
        }
        if (told.said().isEmpty()) {
            line(Tick.ICON, texts.say("ends.same"));
        }
    }

    private void line(javax.swing.Icon mark, String said) {
        Prose sentence = new Prose(said);
        sentences.add(sentence);
        add(new UnheardPicture(mark), "aligny top");
        add(sentence, "wmin 40");
    }

    /** Twist, shed and side always differ in a mirror, or may: they are only to be known. */
    private static Severity weight(BlockPair.Aspect aspect) {
        return switch (aspect) {
            case LEAN, SHED, SIDE, LEFT_OUT -> Severity.NOTE;
            default -> Severity.CAUTION;
        };
    }

    boolean isFocused() {
        return name.isFocusOwner();
    }

    void focus() {
        name.requestFocusInWindow();
    }

    /** Marks it with a band and a bar. */
    void setSelected(boolean other) {
        selected = other;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (selected) {
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.fillRect(0, 0, 3, getHeight());
        }
    }

    BlockPair pair() {
        return pair;
    }

    /** The same is true of this pair. */
    void setPair(BlockPair other) {
        pair = other;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        measured = new Dimension();
    }

    /** The height that its words take within a width, pixels. */
    int heightFor(int width) {
        if (width != measured.width) {
            setSize(new Dimension(width, Math.max(1, getHeight())));
            // the widths of the first time follow from heights that wrapped otherwise
            for (int i = 0; i < 2; i++) {
                doLayout();
                sentences.forEach(sentence -> sentence.setSize(sentence.getWidth(), 10_000));
            }
            measured = new Dimension(width, getLayout().preferredLayoutSize(this).height);
        }
        return measured.height;
    }

    /** Where a line from a block meets it, below its upper edge. */
    int anchor() {
        return name.getY() + name.getHeight() / 2;
    }
}

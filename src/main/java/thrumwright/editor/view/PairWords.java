package thrumwright.editor.view;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Prose;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPair;
import thrumwright.plan.Severity;

/** What is said of a block of the start and its partner in the top. */
final class PairWords extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient BlockPair pair;
    private final JButton name;
    private final transient List<Prose> sentences = new ArrayList<>();

    /** @param said a sentence for each of the pair's differences */
    PairWords(BlockPair pair, List<String> said, Texts texts, Session session) {
        super(new MigLayout("insets 1 0 3 0, wrap 2, fillx, gapy 1", "[]6[grow, fill, 40::]"));
        this.pair = pair;
        setOpaque(false);
        setName("pair." + pair.block().id());
        Place place = pair.start().isPresent() ? Place.START : Place.TOP;
        String block = texts.words().name(pair.block());
        name = new JButton(block);
        name.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        name.putClientProperty(FlatClientProperties.STYLE, "font: $semibold.font; margin: 1,2,1,2");
        name.setToolTipText(texts.say(
                "ends.go", Map.of("block", block, "place", texts.words().place(place))));
        name.addActionListener(
                event -> session.select(Selection.of(place, pair.block().id())));
        add(name, "span 2, growx 0, wmin 0");
        int at = 0;
        for (BlockPair.Aspect aspect : pair.differences()) {
            line(new Mark(weight(aspect)), said.get(at++));
        }
        if (said.isEmpty()) {
            line(Tick.ICON, texts.say("ends.same"));
        }
    }

    private void line(javax.swing.Icon mark, String said) {
        Prose sentence = new Prose(said);
        sentences.add(sentence);
        add(new JLabel(mark), "aligny top");
        add(sentence, "wmin 40");
    }

    /** Twist, shed and side always differ in a mirror, or may: they are only to be known. */
    private static Severity weight(BlockPair.Aspect aspect) {
        return switch (aspect) {
            case LEAN, SHED, SIDE, LEFT_OUT -> Severity.NOTE;
            default -> Severity.CAUTION;
        };
    }

    BlockPair pair() {
        return pair;
    }

    /** The height that its words take within a width, pixels. */
    int heightFor(int width) {
        if (width != getWidth()) {
            setSize(new Dimension(width, Math.max(1, getHeight())));
            validate();
            sentences.forEach(sentence -> sentence.setSize(sentence.getWidth(), 10_000));
        }
        return getLayout().preferredLayoutSize(this).height;
    }

    /** Where a line from a block meets it, below its upper edge. */
    int anchor() {
        return name.getY() + name.getHeight() / 2;
    }
}

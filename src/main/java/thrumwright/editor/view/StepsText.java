package thrumwright.editor.view;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JTextPane;
import javax.swing.UIManager;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultStyledDocument;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.StyleConstants;
import javax.swing.text.TabSet;
import javax.swing.text.TabStop;
import thrumwright.editor.look.Theme;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.Step;

/** Chapters and steps as text that wraps, with a band and a bar beside the steps that are marked. */
final class StepsText extends JTextPane {
    private static final long serialVersionUID = 1L;
    private static final int SIDE = 12;
    private static final int INDENT = 26;
    private static final int BAR = 3;

    /** A text's property that says by what rules its lines are broken. */
    private static final String ANY_LANGUAGE = "multiByte";

    private transient List<Chapter> chapters = List.of();
    private transient List<SaidStretch> stretches = List.of();
    private transient List<SaidStretch> marked = List.of();

    /**
     * Where a step stands in the text.
     *
     * @param to after its last letter
     */
    record SaidStretch(Step step, int from, int to) {}

    StepsText() {
        Theme.nameFonts();
        setEditorKit(new WrappedText());
        setEditable(false);
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(8, SIDE, 8, SIDE));
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setOpaque(false);
        // other words must not scroll what is being read
        if (getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        if (chapters != null && !chapters.isEmpty()) {
            write();
        }
    }

    /** @return whether these chapters are others than before */
    boolean show(List<Chapter> other) {
        boolean news = !other.equals(chapters);
        if (news) {
            chapters = List.copyOf(other);
            write();
        }
        return news;
    }

    List<SaidStretch> stretches() {
        return stretches;
    }

    List<SaidStretch> marked() {
        return marked;
    }

    /** Marks some steps; those that are no longer there are passed over. */
    void mark(List<SaidStretch> some) {
        if (!some.equals(marked)) {
            marked = List.copyOf(some);
            repaint();
        }
    }

    Optional<SaidStretch> at(int offset) {
        return stretches.stream()
                .filter(each -> each.from() <= offset && offset < each.to())
                .findFirst();
    }

    /** Scrolls as little as needed. */
    void reveal(SaidStretch stretch) {
        box(stretch).ifPresent(this::scrollRectToVisible);
    }

    private void write() {
        DefaultStyledDocument document = new DefaultStyledDocument();
        SimpleAttributeSet usual = new SimpleAttributeSet();
        Font font = UIManager.getFont("Label.font");
        StyleConstants.setFontFamily(usual, font.getFamily());
        StyleConstants.setFontSize(usual, font.getSize());
        StyleConstants.setForeground(usual, UIManager.getColor("Label.foreground"));
        List<SaidStretch> all = new ArrayList<>();
        try {
            for (Chapter chapter : chapters) {
                heading(document, chapter.title(), usual);
                for (String sentence : chapter.opening()) {
                    paragraph(document, sentence, usual, 0, 0, 1);
                }
                for (Step step : chapter.steps()) {
                    int from = document.getLength();
                    write(document, step, usual);
                    all.add(new SaidStretch(step, from, document.getLength()));
                }
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("text is only ever added at the end", e);
        }
        stretches = List.copyOf(all);
        marked = List.of();
        // lines end at spaces; one inch sign or dash would have the whole text looked through by the rules of all
        // languages
        document.putProperty(ANY_LANGUAGE, false);
        setDocument(document);
    }

    private static void heading(DefaultStyledDocument document, String title, AttributeSet usual)
            throws BadLocationException {
        SimpleAttributeSet large = new SimpleAttributeSet(usual);
        Font font = UIManager.getFont("h3.font");
        StyleConstants.setFontFamily(large, font.getFamily());
        StyleConstants.setFontSize(large, font.getSize());
        paragraph(document, title, large, 0, 0, document.getLength() == 0 ? 0 : 14);
    }

    private static void write(DefaultStyledDocument document, Step step, AttributeSet usual)
            throws BadLocationException {
        SimpleAttributeSet strong = new SimpleAttributeSet(usual);
        StyleConstants.setFontFamily(strong, UIManager.getFont("semibold.font").getFamily());
        int from = document.getLength();
        String take = step.take().isEmpty() ? "" : ". " + step.take();
        paragraph(document, step.number() + "\t" + step.title() + take, usual, INDENT, -INDENT, 8);
        int title = (step.number() + "\t" + step.title()).length();
        document.setCharacterAttributes(from, title, strong, false);
        for (String sentence : step.sentences()) {
            paragraph(document, sentence, usual, INDENT, 0, 1);
        }
        if (!step.reach().isEmpty()) {
            paragraph(document, step.reach(), usual, INDENT, 0, 1);
        }
        SimpleAttributeSet leaning = new SimpleAttributeSet(usual);
        StyleConstants.setItalic(leaning, true);
        for (String caution : step.cautions()) {
            paragraph(document, caution, leaning, INDENT, 0, 1);
        }
    }

    /**
     * @param indent of all lines
     * @param first by how much the first line stands further in
     * @param above room above it
     */
    private static void paragraph(
            DefaultStyledDocument document, String text, AttributeSet look, int indent, int first, int above)
            throws BadLocationException {
        int from = document.getLength();
        document.insertString(from, text + "\n", look);
        SimpleAttributeSet place = new SimpleAttributeSet();
        StyleConstants.setLeftIndent(place, indent);
        StyleConstants.setFirstLineIndent(place, first);
        StyleConstants.setSpaceAbove(place, above);
        StyleConstants.setTabSet(place, new TabSet(new TabStop[] {new TabStop(0)}));
        document.setParagraphAttributes(from, text.length(), place, false);
    }

    /** From edge to edge, as high as the step's lines. */
    private Optional<Rectangle> box(SaidStretch stretch) {
        try {
            Rectangle2D first = modelToView2D(stretch.from());
            Rectangle2D last = modelToView2D(Math.max(stretch.from(), stretch.to() - 1));
            if (first == null || last == null) {
                return Optional.empty();
            }
            int top = (int) Math.floor(first.getMinY()) - 3;
            return Optional.of(new Rectangle(0, top, getWidth(), (int) Math.ceil(last.getMaxY()) + 3 - top));
        } catch (BadLocationException e) {
            return Optional.empty();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(getBackground());
        g.fill(g.getClipBounds());
        List<Rectangle> boxes =
                marked.stream().map(this::box).flatMap(Optional::stream).toList();
        for (Rectangle box : boxes) {
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fill(box);
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.fillRect(0, box.y, BAR, box.height);
        }
        if (isFocusOwner()) {
            g.setColor(UIManager.getColor("Thrumwright.selected"));
            g.setStroke(new BasicStroke(2));
            for (Rectangle box : boxes.isEmpty() ? List.of(getVisibleRect()) : boxes) {
                g.drawRect(box.x + 1, box.y + 1, box.width - 2, box.height - 2);
            }
        }
        g.dispose();
        super.paintComponent(graphics);
    }
}

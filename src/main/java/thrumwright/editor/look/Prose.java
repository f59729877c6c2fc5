package thrumwright.editor.look;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.DefaultCaret;

/** Sentences that wrap within whatever width there is. Not a field: the keyboard passes it by. */
public final class Prose extends JTextArea {
    private static final long serialVersionUID = 1L;
    /** The look's name for the font, if it isn't the usual one. */
    private static final String FONT = "Thrumwright.font";

    /** The look's name for the colour, if it isn't the usual one. */
    private static final String COLOUR = "Thrumwright.colour";

    /** Whether it is being told other words; it has its size only once it has them all. */
    private boolean told;

    public Prose(String text) {
        super(text);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(null);
        setHighlighter(null);
        // Else every new text would scroll to its own end.
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        setFont(UIManager.getFont("Label.font"));
    }

    /** A heading that wraps. */
    public static Prose heading(String text) {
        Prose heading = new Prose(text);
        heading.putClientProperty(FONT, "h3.font");
        heading.setFont(UIManager.getFont("h3.font"));
        return heading;
    }

    /**
     * Gives it a colour, in every look.
     *
     * @param key the look's name for it
     */
    public Prose in(String key) {
        putClientProperty(COLOUR, key);
        setForeground(UIManager.getColor(key));
        return this;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (getClientProperty(COLOUR) instanceof String key) {
            setForeground(UIManager.getColor(key));
        }
        setFont(UIManager.getFont(getClientProperty(FONT) instanceof String key ? key : "Label.font"));
        setOpaque(false);
        setBorder(null);
        // other words must not scroll what they stand in
        if (getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
    }

    /** A sentence is its own name, unless it has been given another. */
    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Said();
        }
        return accessibleContext;
    }

    private final class Said extends AccessibleJTextArea {
        private static final long serialVersionUID = 1L;

        @Override
        public String getAccessibleName() {
            String given = super.getAccessibleName();
            return given == null || given.isEmpty() ? getText() : given;
        }
    }

    /** What surrounds it is laid out anew only where the words take another size. */
    @Override
    public void setText(String text) {
        if (getParent() == null) {
            super.setText(text);
            return;
        }
        Dimension before = getPreferredSize();
        told = true;
        super.setText(text);
        told = false;
        if (!before.equals(getPreferredSize())) {
            revalidate();
        }
    }

    @Override
    public void revalidate() {
        if (!told) {
            super.revalidate();
        }
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
            // what is asked for in the middle of a layout is forgotten when that ends
            EventQueue.invokeLater(this::revalidate);
        }
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(40, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Smooth.letters((Graphics2D) g);
        super.paintComponent(g);
    }
}

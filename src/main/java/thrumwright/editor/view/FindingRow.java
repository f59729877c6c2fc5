package thrumwright.editor.view;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.UnheardPicture;
import thrumwright.editor.text.Texts;
import thrumwright.plan.finding.Finding;

/** One finding: its weight as a shape, its sentence, and a button for each right thing to do about it. */
final class FindingRow extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    /**
     * @param said the finding as a sentence
     * @param go shows the block that it is about
     * @param repairs what can be done about it in one step
     * @param mend does one of them, from 0
     */
    FindingRow(Finding finding, String said, List<Edit> repairs, Texts texts, Runnable go, IntConsumer mend) {
        super(new MigLayout("insets 5 10 5 8, wrap 2, gapy 3, fillx", "[]10[grow, fill, 60::]"));
        this.finding = finding;
        setName("finding." + finding.code());
        setFocusable(true);
        setOpaque(false);
        Prose sentence = new Prose(texts.name("severity", finding.severity()) + " " + said);
        add(new UnheardPicture(new Mark(finding.severity())), "aligny top");
        add(sentence, "growx, wmin 60");
        for (int i = 0; i < repairs.size(); i++) {
            int which = i;
            add(button(repairs.get(i), texts, () -> mend.accept(which)), "skip 1, growx 0, wmin 0");
        }
        getAccessibleContext().setAccessibleName(sentence.getText());
        if (finding.blockId().isPresent()) {
            goes(go, sentence);
            getAccessibleContext().setAccessibleDescription(texts.say("findings.go"));
        }
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                scrollRectToVisible(new java.awt.Rectangle(getSize()));
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    private static JButton button(Edit edit, Texts texts, Runnable mend) {
        JButton button = new JButton(Texts.capitalised(edit.name()));
        button.setName("repair");
        button.setToolTipText(texts.say("findings.repair", Map.of("repair", button.getText())));
        button.addActionListener(event -> mend.run());
        return button;
    }

    private void goes(Runnable go, Component sentence) {
        getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "go");
        getActionMap().put("go", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                go.run();
            }
        });
        MouseAdapter click = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                go.run();
            }
        };
        addMouseListener(click);
        sentence.addMouseListener(click);
        sentence.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
    }

    Finding finding() {
        return finding;
    }

    @Override
    protected void paintComponent(Graphics g) {
        if (isFocusOwner()) {
            g.setColor(UIManager.getColor("Thrumwright.selectedBackground"));
            g.fillRect(0, 0, getWidth(), getHeight());
        }
        super.paintComponent(g);
    }

    /** A frame round the finding that has the keyboard. */
    @Override
    protected void paintBorder(Graphics g) {
        if (isFocusOwner()) {
            BorderFactory.createLineBorder(UIManager.getColor("Thrumwright.selected"), 2)
                    .paintBorder(this, g, 0, 0, getWidth(), getHeight());
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AsItem();
        }
        return accessibleContext;
    }

    private final class AsItem extends AccessibleJPanel {
        private static final long serialVersionUID = 1L;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.LIST_ITEM;
        }
    }
}

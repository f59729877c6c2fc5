package thrumwright.editor.view;

import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.UIManager;
import thrumwright.editor.edit.Change;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Following;
import thrumwright.editor.look.Pixels;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.words.FindingWords;

/** The worst finding in one line, shortened where there is no room; nothing where nothing was found. */
public final class FindingLine extends JLabel {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final Locale locale;
    private final transient Following following = new Following(this::follow);

    /** @param asked told when somebody clicks on it */
    public FindingLine(Session session, Locale locale, Runnable asked) {
        this.session = session;
        this.locale = locale;
        setName("findingLine");
        setIconTextGap(Pixels.of(8));
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                asked.run();
            }
        });
        session.listen(this::changed);
        follow();
    }

    /** The picture comes first: what is the matter is looked for after it. */
    private void changed(Change change) {
        if (change == Change.PIECE) {
            following.soon(session.isTrying());
        }
    }

    private void follow() {
        List<Finding> all = session.findings().all();
        setText(all.stream()
                .findFirst()
                .map(FindingWords.of(session.plan().piece(), locale)::say)
                .orElse(""));
        setIcon(all.stream()
                .findFirst()
                .map(worst -> new Mark(worst.severity()))
                .orElse(null));
        setToolTipText(getText().isEmpty() ? null : getText());
        setVisible(!getText().isEmpty());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setForeground(UIManager.getColor("Label.foreground"));
    }
}

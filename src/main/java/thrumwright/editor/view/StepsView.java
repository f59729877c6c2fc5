package thrumwright.editor.view;

import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.edit.Session;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.text.Texts;
import thrumwright.editor.view.StepsText.SaidStretch;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/**
 * The steps of the work, to read while planning. Those of the selected blocks are marked; a click on a step, or the arrow
 * keys, select its block.
 */
public final class StepsView {
    private final Session session;
    private final Texts texts;
    private final StepsText text = new StepsText();
    private final JScrollPane scroll = new JScrollPane(text);

    /** The number of a step that has no block and was chosen all the same; 0: none. */
    private int without;

    private final Quiet quiet = new Quiet();

    public StepsView(Session session, Texts texts) {
        this.session = session;
        this.texts = texts;
        text.setName("steps");
        text.getAccessibleContext().setAccessibleName(texts.say("tab.steps"));
        text.getAccessibleContext().setAccessibleDescription(texts.say("steps.description"));
        text.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event)) {
                    text.at(text.viewToModel2D(event.getPoint())).ifPresent(StepsView.this::choose);
                }
            }
        });
        onKey("UP", -1);
        onKey("DOWN", 1);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        LiveView.keep(session, scroll, this::refresh, this::mark);
    }

    public JComponent component() {
        return scroll;
    }

    private void onKey(String key, int by) {
        text.getInputMap().put(KeyStroke.getKeyStroke(key), "step " + by);
        text.getActionMap().put("step " + by, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                go(by);
            }
        });
    }

    private void go(int by) {
        List<SaidStretch> all = text.stretches();
        if (all.isEmpty()) {
            return;
        }
        int now = text.marked().isEmpty() ? -1 : all.indexOf(text.marked().get(0));
        int next = now < 0 ? 0 : Math.max(0, Math.min(all.size() - 1, now + by));
        choose(all.get(next));
        text.setCaretPosition(all.get(next).from());
        text.reveal(all.get(next));
    }

    private void choose(SaidStretch stretch) {
        Optional<Step.Picture> picture = stretch.step().picture();
        without = picture.isPresent() ? 0 : stretch.step().number();
        quiet.during(() -> session.select(picture.map(shown -> Selection.of(shown.place(), shown.blockId()))
                .orElseGet(Selection::none)));
        mark();
    }

    private void refresh() {
        int seen = scroll.getVerticalScrollBar().getValue();
        if (text.show(StepSheet.of(session.plan(), texts.locale()).chapters())) {
            SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(seen));
        }
    }

    private void mark() {
        without = session.selection().isEmpty() ? without : 0;
        List<SaidStretch> other = text.stretches().stream()
                .filter(stretch -> stretch.step().number() == without || isSelected(stretch.step()))
                .toList();
        boolean news = !other.equals(text.marked());
        text.mark(other);
        if (news && !quiet.now() && !other.isEmpty()) {
            // once the text is laid out
            SwingUtilities.invokeLater(() -> text.reveal(other.get(0)));
        }
    }

    private boolean isSelected(Step step) {
        return step.picture()
                .filter(shown -> session.selection().has(shown.place(), shown.blockId()))
                .isPresent();
    }
}

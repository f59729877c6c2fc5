package thrumwright.editor.view;

import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/** The steps of the work, to read while planning. */
public final class StepsView {
    private final Session session;
    private final Texts texts;
    private final JTextArea text = new JTextArea();
    private final JScrollPane scroll = new JScrollPane(text);

    public StepsView(Session session, Texts texts) {
        this.session = session;
        this.texts = texts;
        text.setName("steps");
        text.setEditable(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setBorder(BorderFactory.createEmptyBorder(8, 12, 8, 12));
        text.getAccessibleContext().setAccessibleName(texts.say("tab.steps"));
        scroll.setBorder(BorderFactory.createEmptyBorder());
        LiveView.keep(session, scroll, this::refresh);
    }

    public JComponent component() {
        return scroll;
    }

    private void refresh() {
        StringBuilder all = new StringBuilder();
        for (Chapter chapter : StepSheet.of(session.plan(), texts.locale()).chapters()) {
            all.append(all.length() == 0 ? "" : "\n").append(chapter.title()).append('\n');
            chapter.opening().forEach(sentence -> all.append(sentence).append('\n'));
            chapter.steps().forEach(step -> add(all, step));
        }
        String steps = all.toString();
        if (!steps.equals(text.getText())) {
            int seen = scroll.getVerticalScrollBar().getValue();
            text.setText(steps);
            text.setCaretPosition(0);
            javax.swing.SwingUtilities.invokeLater(
                    () -> scroll.getVerticalScrollBar().setValue(seen));
        }
    }

    private static void add(StringBuilder all, Step step) {
        all.append('\n').append(step.number()).append("  ").append(step.title());
        if (!step.take().isEmpty()) {
            all.append(". ").append(step.take());
        }
        all.append('\n');
        step.sentences().forEach(sentence -> all.append("    ").append(sentence).append('\n'));
        if (!step.reach().isEmpty()) {
            all.append("    ").append(step.reach()).append('\n');
        }
        step.cautions().forEach(caution -> all.append("    ").append(caution).append('\n'));
    }
}

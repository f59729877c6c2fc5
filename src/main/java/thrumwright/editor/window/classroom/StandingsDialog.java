package thrumwright.editor.window.classroom;

import java.awt.Component;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.look.Modal;
import thrumwright.editor.text.Texts;

/** Shows who of a class stands where. */
final class StandingsDialog {
    private final Modal<Boolean> modal;

    StandingsDialog(Component parent, Texts texts, Standings standings) {
        this.modal = new Modal<>(parent, "standings", texts.say("standings.title"));
        JTable table = new JTable(model(texts, standings));
        table.setName("standings.table");
        table.getAccessibleContext().setAccessibleName(texts.say("standings.title"));
        table.setDefaultEditor(Object.class, null);
        JButton close = new JButton(texts.say("standings.close"));
        close.setName("standings.close");
        close.addActionListener(event -> modal.close());
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fill", "[grow, fill]", "[grow, fill][]"));
        panel.add(new JScrollPane(table), "w 200:720:, h 120:320:");
        panel.add(close, "grow 0, right");
        modal.fill(panel, close);
    }

    private static DefaultTableModel model(Texts texts, Standings standings) {
        DateTimeFormatter when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(Locale.getDefault(Locale.Category.FORMAT));
        DefaultTableModel model = new DefaultTableModel(
                new Object[] {texts.say("standings.who"), texts.say("standings.at"), texts.say("standings.last")}, 0);
        for (Standings.Line line : standings.lines()) {
            String none = line.problem().isEmpty() ? texts.say("standings.none") : line.problem();
            model.addRow(new Object[] {
                line.who(),
                line.standing().map(standing -> standing.at()).orElse(none),
                line.standing()
                        .flatMap(standing -> standing.last())
                        .map(when::format)
                        .orElse("")
            });
        }
        return model;
    }

    void show() {
        modal.ask();
    }
}

package thrumwright.editor.files;

import java.awt.Component;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.library.StructureChooser;
import thrumwright.editor.look.Modal;
import thrumwright.editor.settings.Settings;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Texts;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Beginnings;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;

/** Asks how a new piece begins: with which structure, in which units. */
final class BeginningDialog {
    /** The units of the last new piece stay for the next one. */
    private static final String LAST_UNITS = "begin.units";

    private final Texts texts;
    private final Modal<Beginning> modal;
    private final JRadioButton metric;
    private final JRadioButton inches;
    private final JButton begin;
    private final StructureChooser chooser;
    private final OwnThingsRow own;
    private final Settings settings;

    BeginningDialog(Component parent, Workplace room) {
        this.texts = room.texts();
        this.modal = new Modal<>(parent, "begin", texts.say("begin.title"));
        this.settings = room.settings();
        UnitSystem last =
                settings.get(LAST_UNITS).filter("INCHES"::equals).isPresent() ? UnitSystem.INCHES : UnitSystem.METRIC;
        this.metric = new JRadioButton(texts.say("units.metric"), last == UnitSystem.METRIC);
        this.inches = new JRadioButton(texts.say("units.inches"), last == UnitSystem.INCHES);
        this.own = new OwnThingsRow(room.cupboard().stash(), Beginnings.empty(last), texts);
        this.begin = new JButton(texts.say("begin.begin"));
        this.chooser = new StructureChooser(
                texts, room.theme().palette(), Beginnings.empty(last), Place.START, this::selected);
        build();
        chooser.setStructures(room.library().all());
        chooser.takeKeyboard();
    }

    private void build() {
        ButtonGroup units = new ButtonGroup();
        for (JRadioButton each : new JRadioButton[] {metric, inches}) {
            units.add(each);
            each.addActionListener(event -> chooser.setPiece(Beginnings.empty(units()), Place.START));
        }
        begin.setName("beginWithIt");
        begin.addActionListener(event -> done(chooser.selected()));
        JButton empty = new JButton(texts.say("begin.empty"));
        empty.setName("beginEmpty");
        empty.addActionListener(event -> done(Optional.empty()));
        JButton cancel = new JButton(texts.say("begin.cancel"));
        cancel.addActionListener(event -> modal.close());
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fill", "[grow, fill]", "[][grow, fill][][][]"));
        JLabel title = new JLabel(texts.say("begin.heading"));
        title.setFont(UIManager.getFont("h3.font"));
        panel.add(title);
        panel.add(chooser, "grow, push");
        panel.add(own.component(), "growx");
        panel.add(row(), "growx");
        panel.add(empty, "split 3, gaptop 10");
        panel.add(cancel, "gapbefore push");
        panel.add(begin);
        modal.fill(panel, begin);
    }

    /** The kind of loom that was chosen, and the units. */
    private JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx, novisualpadding", "[]8[grow, fill]16[][][]"));
        row.add(own.picture());
        row.add(own.about(), "wmin 120");
        row.add(new JLabel(texts.say("begin.units")));
        row.add(metric);
        row.add(inches);
        return row;
    }

    private UnitSystem units() {
        return inches.isSelected() ? UnitSystem.INCHES : UnitSystem.METRIC;
    }

    private void selected() {
        begin.setEnabled(chooser != null && chooser.selected().isPresent());
    }

    private void done(Optional<Structure> structure) {
        settings.put(LAST_UNITS, units().name());
        modal.answer(new Beginning(structure, units(), own.chosen()));
    }

    Optional<Beginning> ask() {
        return modal.ask();
    }
}

package thrumwright.editor.library;

import java.awt.Component;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.drawing.Palette;
import thrumwright.editor.look.Modal;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;

/** Asks which structure an end is to have. */
final class UseDialog {
    private final Texts texts;
    private final Library library;
    private final Handing handing;
    private final Piece piece;
    private final Modal<StructureQuestions.Chosen> modal;
    private final StructureChooser chooser;
    private final JRadioButton start;
    private final JRadioButton top;
    private final JLabel own = new JLabel(" ");
    private final JButton use;
    private final JButton write;
    private final JButton reword;
    private final JButton remove;

    UseDialog(
            Component parent,
            Texts texts,
            Palette palette,
            Library library,
            Handing handing,
            Piece piece,
            Place place) {
        this.texts = texts;
        this.library = library;
        this.handing = handing;
        this.piece = piece;
        this.modal = new Modal<>(parent, "useStructure", texts.say("use.title"));
        this.use = new JButton(texts.say("use.use"));
        this.write = new JButton(texts.say("use.write"));
        this.reword = new JButton(texts.say("use.reword"));
        this.remove = new JButton(texts.say("use.remove"));
        this.start = new JRadioButton(texts.say("use.start"), place == Place.START);
        this.top = new JRadioButton(texts.say("use.top"), place == Place.TOP);
        this.chooser = new StructureChooser(texts, palette, piece, place, this::selected);
        build();
    }

    private void build() {
        ButtonGroup places = new ButtonGroup();
        for (JRadioButton each : new JRadioButton[] {start, top}) {
            places.add(each);
            each.addActionListener(event -> placed());
        }
        use.setName("useIt");
        use.addActionListener(event -> done());
        write.setName("writeIt");
        write.addActionListener(event -> chooser.selected().ifPresent(handing::write));
        reword.setName("rewordIt");
        reword.addActionListener(event -> chooser.selected().ifPresent(structure -> {
            handing.reword(structure);
            chooser.setStructures(library.all());
            chooser.select(structure.id());
        }));
        remove.setName("removeIt");
        remove.addActionListener(event -> chooser.selected().ifPresent(structure -> {
            handing.remove(structure);
            chooser.setStructures(library.all());
        }));
        JButton cancel = new JButton(texts.say("begin.cancel"));
        cancel.addActionListener(event -> modal.close());
        JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, fill", "[grow, fill]", "[][][grow, fill][]"));
        JLabel title = new JLabel(texts.say("use.heading"));
        title.setFont(UIManager.getFont("h3.font"));
        own.setForeground(UIManager.getColor("Thrumwright.quiet"));
        panel.add(title, "split 4");
        panel.add(start, "gapbefore 12");
        panel.add(top);
        panel.add(own, "growx");
        panel.add(chooser, "grow, push");
        panel.add(buttons(cancel), "growx");
        chooser.setStructures(library.all());
        placed();
        modal.fill(panel, use);
        chooser.takeKeyboard();
    }

    private JPanel buttons(JButton cancel) {
        JPanel buttons = new JPanel(new MigLayout("insets 8 0 0 0, fillx", "[][][]push[][]"));
        buttons.add(write);
        buttons.add(reword);
        buttons.add(remove);
        buttons.add(cancel);
        buttons.add(use);
        return buttons;
    }

    private Place place() {
        return start.isSelected() ? Place.START : Place.TOP;
    }

    private void placed() {
        own.setText(place() == Place.TOP && piece.topFollows() ? texts.say("use.own") : " ");
        chooser.setPiece(piece, place());
    }

    private void selected() {
        Optional<Structure> selected = chooser == null ? Optional.empty() : chooser.selected();
        use.setEnabled(selected.isPresent());
        write.setEnabled(selected.isPresent());
        boolean ours = selected.map(Structure::id).filter(library::own).isPresent();
        reword.setEnabled(ours);
        remove.setEnabled(ours);
    }

    private void done() {
        chooser.selected()
                .ifPresentOrElse(
                        structure -> modal.answer(new StructureQuestions.Chosen(structure, place())), modal::close);
    }

    Optional<StructureQuestions.Chosen> ask() {
        return modal.ask();
    }
}

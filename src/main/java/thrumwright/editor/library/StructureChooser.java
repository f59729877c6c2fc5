package thrumwright.editor.library;

import java.awt.Component;
import java.awt.Font;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import thrumwright.drawing.Palette;
import thrumwright.editor.look.Prose;
import thrumwright.editor.look.Typed;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.SearchWords;
import thrumwright.piece.Structure;
import thrumwright.plan.finding.StructureFit;
import thrumwright.sheet.PictureWords;

/**
 * All structures with a field to seek in, and how the selected one would fit a piece. The arrow keys move in the list while
 * one types in the field.
 */
public final class StructureChooser extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Texts texts;
    private final transient StructureWords words;
    private final transient SearchWords search;
    private final transient Runnable changed;
    private final transient Map<String, StructureFit> fits = new HashMap<>();
    private final DefaultListModel<Structure> model = new DefaultListModel<>();
    private final JList<Structure> list = new JList<>(model);
    private final JTextField sought = new JTextField(18);
    private final JLabel count = new JLabel();
    private final Prose about = new Prose("");
    private final StructurePicture picture;
    private transient List<Structure> structures = List.of();
    private transient Trying on;

    /** What structures are tried on. */
    private record Trying(Piece piece, Place place) {}

    /** @param changed told when another structure, or none, is selected */
    public StructureChooser(Texts texts, Palette palette, Piece piece, Place place, Runnable changed) {
        super(new MigLayout(
                "insets 0, wrap 2, fill", "[260:320:360]14[grow, fill, 380:500]", "[][grow, fill, 300:480]"));
        this.texts = texts;
        this.words = new StructureWords(texts);
        this.search = SearchWords.of(Phrases.of("thrumwright.piece.search", texts.locale()));
        this.picture = new StructurePicture(palette);
        this.on = new Trying(piece, place);
        this.changed = changed;
        build();
    }

    private void build() {
        JLabel label = new JLabel(texts.say("structure.seek"));
        label.setLabelFor(sought);
        sought.setName("structureSearch");
        sought.setToolTipText(texts.say("structure.seek.tip"));
        Typed.in(sought, this::filter);
        sought.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                step(event);
            }
        });
        list.setName("structures");
        list.getAccessibleContext().setAccessibleName(texts.say("structure.list"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new StructureRow());
        list.addListSelectionListener(event -> describe());
        about.setName("structureAbout");
        add(label, "split 2");
        add(sought, "growx");
        add(count, "growx");
        add(new JScrollPane(list), "grow");
        add(shown(), "grow");
    }

    private JPanel shown() {
        JScrollPane told = new JScrollPane(
                about,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        told.setBorder(BorderFactory.createEmptyBorder());
        JPanel shown = new JPanel(new MigLayout("insets 0, wrap 1, fill", "[grow, fill]", "[190!]8[grow, fill]"));
        shown.add(picture, "grow");
        shown.add(told, "grow, push");
        return shown;
    }

    /** Whoever seeks first should find the keyboard here. */
    public void takeKeyboard() {
        sought.requestFocusInWindow();
    }

    /** The structures to choose from; the selected one stays selected if it is still there. */
    public void setStructures(List<Structure> all) {
        structures = List.copyOf(all);
        fits.clear();
        filter();
    }

    /** Another piece to try them on, or another end of it. */
    public void setPiece(Piece other, Place end) {
        on = new Trying(other, end);
        fits.clear();
        list.repaint();
        describe();
    }

    public Optional<Structure> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    public void select(String id) {
        structures.stream()
                .filter(structure -> structure.id().equals(id))
                .findFirst()
                .ifPresent(structure -> list.setSelectedValue(structure, true));
    }

    private StructureFit fit(Structure structure) {
        return fits.computeIfAbsent(structure.id(), id -> StructureFit.of(structure, on.piece(), on.place()));
    }

    private void filter() {
        Structure before = list.getSelectedValue();
        model.clear();
        structures.stream()
                .filter(structure -> structure.answers(sought.getText(), search))
                .forEach(model::addElement);
        goTo(model.indexOf(before));
        count.setText(texts.say("structure.count", Map.of("count", model.size(), "all", structures.size())));
        describe();
    }

    private void step(KeyEvent event) {
        int by = switch (event.getKeyCode()) {
            case KeyEvent.VK_DOWN -> 1;
            case KeyEvent.VK_UP -> -1;
            case KeyEvent.VK_PAGE_DOWN -> 8;
            case KeyEvent.VK_PAGE_UP -> -8;
            default -> 0;
        };
        if (by != 0 && !model.isEmpty()) {
            goTo(list.getSelectedIndex() + by);
            event.consume();
        }
    }

    /** Selects the line that is nearest to an index. */
    private void goTo(int index) {
        if (!model.isEmpty()) {
            int line = Math.max(0, Math.min(model.size() - 1, index));
            list.setSelectedIndex(line);
            list.ensureIndexIsVisible(line);
        }
    }

    private void describe() {
        Optional<Structure> selected = selected();
        if (selected.isPresent()) {
            StructureFit fit = fit(selected.get());
            about.setText(words.all(fit));
            picture.show(fit, new PictureWords(fit.plan(), texts.locale()).end(on.place(), Map.of()));
        } else {
            about.setText(texts.say("structure.none"));
            picture.showNothing();
        }
        about.setCaretPosition(0);
        changed.run();
    }

    /** A name, and under it how hard it is and how it fits. */
    private final class StructureRow implements ListCellRenderer<Structure> {
        private final JPanel row = new JPanel(new MigLayout("insets 4 8 4 8, wrap 1, gapy 0"));
        private final JLabel name = new JLabel();
        private final JLabel brief = new JLabel();

        StructureRow() {
            name.setFont(UIManager.getFont("Label.font").deriveFont(Font.BOLD));
            brief.setFont(UIManager.getFont("small.font"));
            row.add(name);
            row.add(brief);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Structure> all, Structure structure, int index, boolean selected, boolean focused) {
            name.setText(structure.name());
            brief.setText(words.brief(fit(structure)));
            row.setBackground(selected ? all.getSelectionBackground() : all.getBackground());
            name.setForeground(selected ? all.getSelectionForeground() : all.getForeground());
            brief.setForeground(selected ? all.getSelectionForeground() : UIManager.getColor("Thrumwright.quiet"));
            row.getAccessibleContext().setAccessibleName(name.getText() + ", " + brief.getText());
            return row;
        }
    }
}

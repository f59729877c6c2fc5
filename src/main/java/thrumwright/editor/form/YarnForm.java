package thrumwright.editor.form;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.look.Quiet;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Skein;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** The yarns of the piece, and the fields of the one that is chosen. */
final class YarnForm {
    private static final int MOST_OFFERED = 20;

    private final Desk desk;
    private final DefaultListModel<Yarn> model = new DefaultListModel<>();
    private final JList<Yarn> list = new JList<>(model);
    private final JPanel whole = new JPanel(new MigLayout("insets 0, wrap 1, fillx, gapy 0", "[grow, fill]"));
    private Optional<Panels> panels = Optional.empty();
    private String chosen = "";
    private int shownParts;
    private final Quiet quiet = new Quiet();

    /** The materials above the list, and the fields of the chosen yarn below it. */
    private record Panels(FieldPanel materials, FieldPanel fields) {}

    YarnForm(Desk desk) {
        this.desk = desk;
        list.setName("yarns");
        list.setVisibleRowCount(5);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new WithSwatch());
        list.getAccessibleContext().setAccessibleName(desk.texts().say("heading.yarns"));
        list.addListSelectionListener(event -> choose());
        refresh();
    }

    private static final class WithSwatch extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value, index, selected, focused);
            Yarn yarn = (Yarn) value;
            setText(yarn.name().isBlank() ? yarn.id() : yarn.name());
            setIcon(new Swatch(yarn.colour()));
            return this;
        }
    }

    JPanel panel() {
        return whole;
    }

    private void choose() {
        if (!quiet.now() && list.getSelectedValue() != null) {
            chosen = list.getSelectedValue().id();
            rebuild();
        }
    }

    void refresh() {
        List<Yarn> yarns = desk.session().shown().yarns();
        if (yarns.stream().noneMatch(yarn -> yarn.id().equals(chosen))) {
            chosen = yarns.isEmpty() ? "" : yarns.get(0).id();
            quiet.during(() -> fill(yarns));
            rebuild();
            return;
        }
        if (!yarns.equals(List.copyOf(java.util.Collections.list(model.elements())))) {
            quiet.during(() -> fill(yarns));
        }
        if (shownParts != parts()) {
            rebuildWhereItWas();
            return;
        }
        panels.ifPresent(shown -> {
            shown.fields().refresh();
            shown.materials().refresh();
        });
    }

    void takeOver() {
        panels.ifPresent(shown -> shown.fields().takeOver());
    }

    private void fill(List<Yarn> yarns) {
        model.clear();
        yarns.forEach(model::addElement);
        for (int i = 0; i < yarns.size(); i++) {
            if (yarns.get(i).id().equals(chosen)) {
                list.setSelectedIndex(i);
            }
        }
    }

    /** How many fields for strands the chosen yarn needs. */
    private int parts() {
        return known(desk.session().shown(), chosen).map(StrandFields::parts).orElse(0);
    }

    /** The keyboard stays where it was, if there is such a field still. */
    private void rebuildWhereItWas() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean here = owner != null && SwingUtilities.isDescendingFrom(owner, whole);
        String name = here ? String.valueOf(owner.getName()) : "";
        rebuild();
        focus(name);
    }

    private void focus(String name) {
        for (Component each : panels.orElseThrow().fields().getComponents()) {
            if (name.equals(each.getName())) {
                each.requestFocusInWindow();
            }
        }
    }

    private void rebuild() {
        whole.removeAll();
        shownParts = parts();
        FieldPanel materials = new FieldPanel(desk);
        materials.heading("heading.materials");
        FieldPanel.Section<Piece> parts =
                materials.about(Subject.always("materials", piece -> piece, (piece, other) -> other));
        parts.choice("yarns.cord", this::choices, Piece::cordId, Piece::withCord);
        parts.choice("yarns.waste", this::choices, Piece::wasteId, Piece::withWaste);
        materials.heading("heading.yarns");
        materials.wide(new JScrollPane(list));
        materials.wide(buttons());
        FieldPanel fields = new FieldPanel(desk);
        yarn(fields);
        panels = Optional.of(new Panels(materials, fields));
        whole.add(materials, "wmin 0");
        whole.add(fields, "wmin 0");
        whole.revalidate();
        whole.repaint();
    }

    private List<Choice<String>> choices() {
        return desk.session().shown().yarns().stream()
                .map(yarn -> new Choice<>(yarn.id(), yarn.name(), new Swatch(yarn.colour())))
                .toList();
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0, novisualpadding"));
        JButton add = button("yarns.add", "addYarn", this::add);
        JButton remove = button("yarns.remove", "removeYarn", this::remove);
        boolean needed = desk.session().piece().uses(chosen);
        remove.setEnabled(!needed);
        remove.setToolTipText(needed ? desk.texts().say("yarns.remove.needed") : null);
        JButton shelf = new JButton(desk.texts().say("yarns.shelf"));
        shelf.setName("yarnShelf");
        shelf.setToolTipText(desk.texts().say("yarns.shelf.tip"));
        shelf.addActionListener(event -> offered().show(shelf, 0, shelf.getHeight()));
        buttons.add(add);
        buttons.add(remove);
        buttons.add(shelf, "newline, span 2");
        JButton wind = button("yarns.wind", "windYarn", this::wind);
        wind.setToolTipText(desk.texts().say("yarns.wind.tip"));
        buttons.add(wind, "newline, span 2");
        return buttons;
    }

    private JButton button(String key, String name, Runnable action) {
        JButton button = new JButton(desk.texts().say(key));
        button.setName(name);
        button.addActionListener(event -> action.run());
        return button;
    }

    /** The weaver's own yarns, and in a menu of their own those of the trade. */
    private JPopupMenu offered() {
        YarnShelf shelf = new YarnShelf(desk.stash(), desk.texts());
        JPopupMenu menu = new JPopupMenu();
        menu.setName("yarnShelf.menu");
        shelf.own().stream().limit(MOST_OFFERED).forEach(each -> menu.add(item(each)));
        JMenu trade = new JMenu(desk.texts().say("yarns.trade"));
        trade.setName("yarnShelf.trade");
        shelf.trade().forEach(each -> trade.add(item(each)));
        menu.add(trade);
        return menu;
    }

    private JMenuItem item(Choice<Yarn> choice) {
        JMenuItem item = new JMenuItem(choice.text(), choice.icon());
        item.addActionListener(event -> add(choice.value()));
        return item;
    }

    private void add() {
        boolean inches = units() == UnitSystem.INCHES;
        add(new Yarn(
                "new",
                desk.texts().say("yarns.new"),
                new Colour(0xb5893e),
                Fibre.WOOL,
                new Thickness.Measured(Length.parse(inches ? "0.08 in" : "2 mm")),
                Firmness.SOFT));
        takeName();
    }

    /** A new yarn has no name of its own yet. */
    private void takeName() {
        focus("field.yarn.name");
    }

    /** Two strands of the chosen yarn, or of the first that can be a strand. */
    private void wind() {
        Piece piece = desk.session().piece();
        List<Yarn> single = StrandFields.single(piece);
        Yarn strand = single.stream()
                .filter(yarn -> yarn.id().equals(chosen))
                .findFirst()
                .orElse(single.get(0));
        Bundle two = new Bundle(List.of(new Strands(strand, 2)));
        add(Yarn.wound("new", desk.texts().say("yarns.wound", Map.of("yarn", strand.name())), two));
        takeName();
    }

    private void add(Yarn kept) {
        Piece piece = desk.session().piece();
        String id = "yarn";
        for (int i = 2; has(piece, id); i++) {
            id = "yarn-" + i;
        }
        List<Yarn> more = new ArrayList<>(piece.yarns());
        more.add(kept.withId(id));
        chosen = id;
        desk.session().edit(Edit.of(desk.texts().say("edit.yarn-add"), old -> old.withYarns(more)));
        rebuild();
    }

    private static boolean has(Piece piece, String id) {
        return piece.yarns().stream().anyMatch(yarn -> yarn.id().equals(id));
    }

    private void remove() {
        Piece piece = desk.session().piece();
        Yarn gone = piece.yarn(chosen);
        List<Yarn> fewer = piece.yarns().stream().filter(yarn -> yarn != gone).toList();
        desk.session()
                .edit(Edit.of(
                        desk.texts().say("edit.yarn-remove", Map.of("yarn", gone.name())),
                        old -> old.withYarns(fewer)));
    }

    private void yarn(FieldPanel panel) {
        String id = chosen;
        Subject<Yarn> subject = new Subject<>(
                "yarn/" + id,
                known(desk.session().shown(), id).map(Yarn::name).orElse(""),
                piece -> known(piece, id),
                (piece, other) -> piece.withYarns(piece.yarns().stream()
                        .map(known -> known.id().equals(id) ? other : known)
                        .toList()));
        FieldPanel.Section<Yarn> yarn = panel.about(subject);
        yarn.text("yarn.name", Yarn::name, (part, typed) -> part.withName(typed.strip()));
        if (shownParts > 0) {
            new StrandFields(desk, subject).addTo(panel);
            woven(yarn);
        } else {
            looks(yarn);
            measures(yarn);
            woven(yarn);
            sold(yarn);
        }
        panel.prose(() -> said(id, (piece, known) -> MeasuredWords.yarn(piece, known, desk.texts())));
        panel.heading("heading.advice");
        panel.advice(() -> known(desk.session().shown(), id)
                .map(known -> Advising.yarn(
                        desk.session().shown(), known, desk.texts().locale()))
                .orElse(List.of()));
    }

    private static Optional<Yarn> known(Piece piece, String id) {
        return piece.yarns().stream().filter(yarn -> yarn.id().equals(id)).findFirst();
    }

    private String said(String id, BiFunction<Piece, Yarn, String> words) {
        Piece piece = desk.session().shown();
        return known(piece, id).map(yarn -> words.apply(piece, yarn)).orElse("");
    }

    private void looks(FieldPanel.Section<Yarn> yarn) {
        new ColourButton(desk)
                .addTo(yarn.text(
                        "yarn.colour",
                        part -> part.colour().text(),
                        (part, typed) -> part.withColour(Colour.parse(typed.strip()))));
        yarn.oneOf("yarn.fibre", "fibre", Fibre.values(), Yarn::fibre, Yarn::withFibre);
    }

    private void measures(FieldPanel.Section<Yarn> yarn) {
        yarn.measure(
                "yarn.thickness",
                part -> part.thickness().text(),
                (part, typed) -> part.withThickness(thickness(part, typed)));
        yarn.measure(
                "yarn.also",
                part -> part.alsoTold().map(Thickness::text).orElse(""),
                (part, typed) ->
                        part.withAlsoTold(typed.isBlank() ? Optional.empty() : Optional.of(thickness(part, typed))));
        yarn.oneOf("yarn.firmness", "firmness", Firmness.values(), Yarn::firmness, Yarn::withFirmness);
    }

    /** What was measured in cloth. */
    private void woven(FieldPanel.Section<Yarn> yarn) {
        yarn.measure(
                "yarn.sample",
                part -> part.sample().map(YarnForm::sample).orElse(""),
                (part, typed) -> part.withSample(sample(typed)));
        yarn.measure(
                "yarn.used",
                part -> part.usage().map(YarnForm::usage).orElse(""),
                (part, typed) -> part.withUsage(usage(typed)));
    }

    private void sold(FieldPanel.Section<Yarn> yarn) {
        yarn.lengthOrNone("yarn.stock", Yarn::stock, Yarn::withStock);
        yarn.measure(
                "yarn.skein",
                part -> part.skein().map(Skein::text).orElse(""),
                (part, typed) -> part.withSkein(typed.isBlank() ? Optional.empty() : Optional.of(Skein.parse(typed))));
    }

    private Thickness thickness(Yarn yarn, String typed) {
        return Thickness.parse(typed, yarn.fibre(), units());
    }

    private static String sample(Sample sample) {
        return sample.picks() + " picks in " + sample.height();
    }

    private static String usage(Usage usage) {
        return usage.length() + " for " + usage.picks() + (usage.picks() == 1 ? " pick" : " picks");
    }

    private Optional<Usage> usage(String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Matcher match = Pattern.compile("(.+?)\\s*(?:for|per|in|/)\\s*(\\d{1,5})\\s*(?:picks?)?")
                .matcher(typed.strip());
        if (!match.matches()) {
            throw new BadMeasure(desk.texts().say("reason.used", Map.of("typed", typed.strip())));
        }
        return Optional.of(new Usage(Integer.parseInt(match.group(2)), Typing.length(match.group(1), units())));
    }

    private Optional<Sample> sample(String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        Matcher match = Pattern.compile("(\\d{1,5})\\s*(?:picks?)?\\s*(?:in|per|/)\\s*(.+)")
                .matcher(typed.strip());
        if (!match.matches()) {
            throw new BadMeasure(desk.texts().say("reason.sample", Map.of("typed", typed.strip())));
        }
        return Optional.of(new Sample(Integer.parseInt(match.group(1)), Typing.length(match.group(2), units())));
    }

    private UnitSystem units() {
        return desk.session().piece().habits().units();
    }
}

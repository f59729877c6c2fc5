package thrumwright.editor;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.yarn.Colour;
import thrumwright.yarn.Fibre;
import thrumwright.yarn.Firmness;
import thrumwright.yarn.Sample;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** The form of the yarns: one is shown at a time. */
final class YarnForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final Pattern SAMPLE = Pattern.compile("(\\d{1,5})\\s*(?:picks?|rows?)?\\s*in\\s+(.+)");

    private final transient Session session;
    private final transient Phrases phrases;
    private final FormPanel form;
    private final JButton remove;
    private String shown;

    YarnForm(Session session, Phrases phrases) {
        super(new BorderLayout());
        this.session = session;
        this.phrases = phrases;
        this.form = new FormPanel(phrases);
        this.shown = session.piece().yarns().get(0).id();
        this.remove = new JButton(phrases.say("yarn.remove"));
        build();
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(null);
        add(scroll);
        session.listen(this::refresh);
        refresh();
    }

    private void refresh() {
        if (session.piece().yarns().stream().noneMatch(yarn -> yarn.id().equals(shown))) {
            shown = session.piece().yarns().get(0).id();
        }
        boolean used = session.piece().uses(shown);
        remove.setEnabled(!used);
        remove.setToolTipText(phrases.say(used ? "yarn.remove.used" : "yarn.remove.tip"));
        form.refresh();
    }

    private Yarn yarn() {
        return session.piece().yarn(shown);
    }

    private void build() {
        form.choice("yarn.which", this::names, () -> shown, id -> {
            shown = id;
            refresh();
        });
        form.wide(buttons());
        form.field(
                "yarn.name",
                () -> yarn().name(),
                text -> change(y -> copy(
                        y, text.strip(), y.colour(), y.fibre(), y.thickness(), y.firmness(), y.sample(), y.stock())));
        form.field(
                "yarn.colour",
                () -> yarn().colour().text(),
                text -> change(y -> y.withColour(Colour.parse(text.strip()))));
        form.choice(
                "yarn.fibre",
                () -> FormPanel.named(Fibre.class, each -> phrases.say("fibre." + each)),
                () -> yarn().fibre(),
                fibre -> change(
                        y -> copy(y, y.name(), y.colour(), fibre, y.thickness(), y.firmness(), y.sample(), y.stock())));
        form.field(
                "yarn.thickness",
                () -> yarn().thickness().text(),
                text -> change(y -> copy(
                        y,
                        y.name(),
                        y.colour(),
                        y.fibre(),
                        Thickness.parse(text),
                        y.firmness(),
                        y.sample(),
                        y.stock())));
        form.choice(
                "yarn.firmness",
                () -> FormPanel.named(Firmness.class, each -> phrases.say("firmness." + each)),
                () -> yarn().firmness(),
                firmness -> change(
                        y -> copy(y, y.name(), y.colour(), y.fibre(), y.thickness(), firmness, y.sample(), y.stock())));
        form.field(
                "yarn.sample",
                this::sample,
                text -> change(y -> copy(
                        y, y.name(), y.colour(), y.fibre(), y.thickness(), y.firmness(), sample(text), y.stock())));
        form.field(
                "yarn.stock",
                () -> yarn().stock().map(Length::text).orElse(""),
                text -> change(y -> copy(
                        y,
                        y.name(),
                        y.colour(),
                        y.fibre(),
                        y.thickness(),
                        y.firmness(),
                        y.sample(),
                        text.isBlank() ? Optional.empty() : Optional.of(Length.parse(text)))));
        form.text(
                "yarn.facts",
                () -> phrases.say(
                        "yarn.facts",
                        Map.of(
                                "diameter", session.piece().shown().fine(yarn().diameter()),
                                "beaten", session.piece().shown().fine(yarn().beaten()),
                                "tex", session.piece().shown().decimals(yarn().tex(), 0))));
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[][]", ""));
        JButton add = new JButton(phrases.say("yarn.add"));
        add.setName("yarn.add");
        add.addActionListener(event -> add());
        remove.setName("yarn.remove");
        remove.addActionListener(event -> session.apply(Edits.piece(
                phrases.say("edit.yarn-removed"),
                piece -> piece.withYarns(piece.yarns().stream()
                        .filter(yarn -> !yarn.id().equals(shown))
                        .toList()))));
        buttons.add(add);
        buttons.add(remove);
        return buttons;
    }

    private void add() {
        Piece piece = session.piece();
        int number = piece.yarns().size() + 1;
        while (hasYarn(piece, "yarn-" + number)) {
            number++;
        }
        String id = "yarn-" + number;
        Yarn like = yarn();
        List<Yarn> yarns = new ArrayList<>(piece.yarns());
        yarns.add(copy(
                like.withId(id),
                phrases.say("yarn.new"),
                like.colour(),
                like.fibre(),
                like.thickness(),
                like.firmness(),
                like.sample(),
                Optional.empty()));
        shown = id;
        session.apply(Edits.piece(phrases.say("edit.yarn-added"), p -> p.withYarns(yarns)));
    }

    private static boolean hasYarn(Piece piece, String id) {
        return piece.yarns().stream().anyMatch(yarn -> yarn.id().equals(id));
    }

    private Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        session.piece().yarns().forEach(yarn -> names.put(yarn.id(), yarn.name()));
        return names;
    }

    private String sample() {
        return yarn().sample()
                .map(sample -> sample.picks() + " picks in " + sample.height())
                .orElse("");
    }

    private Optional<Sample> sample(String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Matcher match = SAMPLE.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!match.matches()) {
            throw new BadMeasure(phrases.say("wrong.sample", Map.of("typed", text)));
        }
        return Optional.of(new Sample(Integer.parseInt(match.group(1)), Length.parse(match.group(2))));
    }

    private void change(Function<Yarn, Yarn> change) {
        String id = shown;
        Yarn changed = change.apply(yarn());
        session.apply(Edits.piece(
                phrases.say("edit.yarn", Map.of("yarn", yarn().name())),
                piece -> piece.withYarns(piece.yarns().stream()
                        .map(yarn -> yarn.id().equals(id) ? changed : yarn)
                        .toList())));
    }

    private static Yarn copy(
            Yarn yarn,
            String name,
            Colour colour,
            Fibre fibre,
            Thickness thickness,
            Firmness firmness,
            Optional<Sample> sample,
            Optional<Length> stock) {
        return new Yarn(yarn.id(), name, colour, fibre, thickness, firmness, sample, stock);
    }
}

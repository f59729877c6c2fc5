package thrumwright.editor.form;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import thrumwright.block.Block;
import thrumwright.block.OwnWords;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Selection;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.sheet.OwnWording;
import thrumwright.sheet.WordingCheck;

/** The fields of the selected block. */
final class BlockForm {
    private final Desk desk;
    private final Place place;
    private final String id;
    private final FieldPanel panel;
    private final BlockFields fields;

    private BlockForm(Desk desk, Place place, Block block) {
        this.desk = desk;
        this.place = place;
        this.id = block.id();
        this.panel = new FieldPanel(desk);
        this.fields = new BlockFields(desk, panel, place, id);
    }

    /** For the block that leads the selection; the piece at a glance where there is none. */
    static Filling of(Desk desk) {
        Selection selection = desk.session().selection();
        Optional<Block> lead = selection.leadIn(desk.session().shown());
        return lead.map(block -> new BlockForm(desk, selection.place(), block).filling(block))
                .orElseGet(() -> new GlanceForm(desk).filling());
    }

    private Filling filling(Block block) {
        Filling filling = new Filling(panel);
        if (place == Place.TOP && desk.session().piece().topFollows()) {
            return filling.then(this::following).then(() -> measured(block));
        }
        FieldPanel.Section<Block> section = fields.section(Block.class);
        return filling.then(() -> named(section, block))
                .then(() -> block.of(new KindFields(fields)))
                .then(() -> words(section))
                .then(() -> measured(block));
    }

    /** Its name, what it is and how much of it. */
    private void named(FieldPanel.Section<Block> section, Block block) {
        panel.heading(this::whose);
        section.text(
                "block.label",
                part -> part.tag().label(),
                (part, typed) -> part.withTag(part.tag().withLabel(typed.strip())));
        panel.prose(
                () -> desk.session().shown().block(place, id).map(this::about).orElse(""));
        if (Amounts.has(block)) {
            String key = block.finish().isPresent() ? "block.hanging" : "block.amount";
            section.text(
                    key,
                    Amounts::text,
                    (part, typed) -> Amounts.with(part, typed, desk.session().piece(), place));
        }
    }

    /** Of what is worked on the loom. */
    private void measured(Block block) {
        boolean worked = block.woven().isPresent()
                || block.finish().isEmpty() && block.extent().isPresent();
        if (worked) {
            panel.heading("heading.measured");
            new MeasuredFields(desk, panel, place.step(id)).add();
        }
    }

    /** What it comes to, and how its step is said. */
    private void words(FieldPanel.Section<Block> section) {
        if (place == Place.START && desk.session().piece().topFollows()) {
            repeatAtTop();
        }
        comesTo();
        wording(section);
    }

    private void comesTo() {
        panel.heading("heading.comes-to");
        panel.prose(() -> BlockFacts.of(desk.session().plan(), place, id, desk.texts()));
    }

    /** The weaver's own wording of the step, and under it how it will stand on the sheet. */
    private void wording(FieldPanel.Section<Block> section) {
        panel.heading("heading.words");
        JTextArea wording = section.lines(
                "block.words",
                part -> part.tag().words(),
                (part, typed) -> part.withTag(part.tag().withWords(typed.strip())));
        panel.underField(new PlaceButton(
                desk.texts(), () -> new OwnWording(desk.session().plan(), Locale.UK).offered(place, id), wording));
        panel.prose(
                () -> desk.session().shown().block(place, id).map(this::onSheet).orElse(""));
        panel.prose(
                () -> desk.session().shown().block(place, id).map(this::remarks).orElse(""));
    }

    private String onSheet(Block block) {
        if (block.tag().words().isBlank()) {
            String places = OwnWords.places(block).stream()
                    .map(name -> "{" + name + "}")
                    .collect(Collectors.joining(", "));
            return desk.texts().say("words.places", Map.of("places", places));
        }
        OwnWording wording = new OwnWording(desk.session().plan(), Locale.UK);
        List<String> sentences = wording.preview(place, id, block.tag().words());
        return desk.texts().say("words.preview", Map.of("sentences", String.join("\n", sentences)));
    }

    /** What the wording leaves out or contradicts, a line each. */
    private String remarks(Block block) {
        WordingCheck check = new WordingCheck(desk.session().plan(), Locale.UK);
        return String.join("\n", check.remarks(place, id, block.tag().words()));
    }

    /** What kind of block it is, and what such a block is good for. */
    private String about(Block block) {
        String kind = desk.texts().words().kind(block);
        return kind + ". " + desk.texts().say("about." + block.key());
    }

    private void repeatAtTop() {
        JCheckBox box = new JCheckBox(desk.texts().say("field.block.repeat"));
        box.setName("field.block.repeat");
        box.setToolTipText(desk.texts().say("field.block.repeat.tip"));
        box.addActionListener(event -> leaveOut(!box.isSelected()));
        Field follow = () -> box.setSelected(desk.session().shown().top() instanceof Top.FollowsStart top
                && !top.leftOut().contains(id));
        follow.refresh();
        panel.add(box, "span 2");
        panel.follow(follow);
    }

    /** Nothing where the block is gone: its fields are still seen then, until others are there. */
    private void leaveOut(boolean out) {
        if (desk.session().piece().start().block(id).isPresent()) {
            desk.session().edit(desk.edits().leaveOut(desk.session().piece(), id, out));
        }
    }

    /** Whose fields these are: the block's name and where it is, counted from the lowest. */
    private String whose() {
        List<Block> blocks = desk.session().shown().end(place).blocks();
        return blocks.stream()
                .filter(block -> block.id().equals(id))
                .findFirst()
                .map(block -> desk.texts()
                        .say(
                                place == Place.START ? "block.start" : "block.top",
                                Map.of(
                                        "block", desk.texts().words().name(block),
                                        "number", blocks.indexOf(block) + 1,
                                        "count", blocks.size())))
                .orElse("");
    }

    /** A block of a top that follows the start can't be changed there. */
    private void following() {
        panel.heading(this::whose);
        panel.prose(() -> desk.session()
                .shown()
                .block(place, id)
                .map(block -> desk.texts()
                        .say(
                                "block.follows",
                                Map.of("block", desk.texts().words().name(block))))
                .orElse(""));
        JButton there = new JButton(desk.texts().say("block.follows.there"));
        there.setName("goToStart");
        there.addActionListener(event -> desk.session().select(Selection.of(Place.START, id)));
        JButton out = new JButton(desk.texts().say("block.follows.out"));
        out.setName("leaveOut");
        out.addActionListener(event -> leaveOut(true));
        JButton own = new JButton(desk.texts().say("field.top.own"));
        own.setName("topOnItsOwn");
        own.addActionListener(event -> desk.session().edit(desk.edits().topOnItsOwn()));
        panel.wide(there);
        panel.wide(out);
        panel.wide(own);
        comesTo();
    }
}

package thrumwright.editor.form;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import thrumwright.editor.look.Prose;
import thrumwright.editor.sheet.SheetChoice;
import thrumwright.editor.sheet.SheetSetup;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;
import thrumwright.measure.UnitSystem;
import thrumwright.output.SheetSection;
import thrumwright.output.page.Paper;

/** How the pages of a sheet are set up. */
public final class PageForm {
    private final SheetSetup setup;
    private final Texts texts;
    private final Supplier<UnitSystem> units;
    private final FieldColumn fields;
    private final Map<SheetSection, Prose> beside = new EnumMap<>(SheetSection.class);
    private final JScrollPane scroll;

    /** @param units of a number that is typed without one */
    public PageForm(SheetSetup setup, Texts texts, Supplier<UnitSystem> units) {
        this.setup = setup;
        this.texts = texts;
        this.units = units;
        this.fields = new FieldColumn(texts, units);
        build();
        setup.listen(fields::refresh);
        this.scroll = new JScrollPane(fields);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    }

    private void build() {
        fields.heading("heading.page");
        FieldColumn.Section<SheetChoice> page = fields.about(new SetupHolder());
        page.oneOf("page.paper", "paper", Paper.values(), SheetChoice::paper, SheetChoice::withPaper);
        page.choice(
                "page.lying",
                () -> List.of(
                        Choice.of(false, texts.say("page.upright")), Choice.of(true, texts.say("page.on-its-side"))),
                SheetChoice::landscape,
                SheetChoice::withLandscape);
        page.measure(
                "page.margin",
                choice -> choice.margin().text(),
                (choice, typed) -> choice.withMargin(length(typed, Unit.MILLIMETRE)));
        page.measure(
                "page.distance",
                choice -> choice.distance().text(),
                (choice, typed) -> choice.withDistance(length(typed, Unit.METRE)));
        page.choice(
                "page.colours",
                () -> List.of(Choice.of(true, texts.say("page.coloured")), Choice.of(false, texts.say("page.grey"))),
                SheetChoice::coloured,
                SheetChoice::withColoured);
        page.flag("page.done", SheetChoice::done, SheetChoice::withDone);
        fields.prose(() -> texts.say("page.about"));
        sections(page);
    }

    private void sections(FieldColumn.Section<SheetChoice> page) {
        fields.heading("heading.page.sections");
        for (SheetSection section : SheetSection.values()) {
            Prose words = page.flag(
                    field(section),
                    named(section),
                    choice -> choice.sections().contains(section),
                    (choice, printed) -> choice.with(section, printed));
            beside.put(section, words);
        }
    }

    private String named(SheetSection section) {
        return texts.say(String.join(".", "field", field(section)));
    }

    private static String field(SheetSection section) {
        return "page.section-" + section.key();
    }

    /** Says how many pages each section takes, whether it is chosen or not. */
    public void count(Map<SheetSection, Integer> pages) {
        pages.forEach((section, count) -> beside.get(section)
                .setText(texts.say("page.section.pages", Map.of("section", named(section), "count", count))));
    }

    private Length length(String typed, Unit metric) {
        return Length.parse(typed, units.get() == UnitSystem.INCHES ? Unit.INCH : metric);
    }

    public JComponent component() {
        return scroll;
    }

    /** Takes over what is being typed. */
    public void takeOver() {
        fields.takeOver();
    }

    private final class SetupHolder implements Holder<SheetChoice> {
        private final Map<String, String> unfinished = new HashMap<>();

        @Override
        public Optional<SheetChoice> value() {
            return Optional.of(setup.choice());
        }

        @Override
        public void change(String label, UnaryOperator<SheetChoice> change, Object run) {
            setup.change(change, run);
        }

        @Override
        public void endRun() {
            setup.endRun();
        }

        @Override
        public void dropRun(Object run) {
            setup.dropRun(run);
        }

        @Override
        public void keep(String field, String typed) {
            unfinished.put(field, typed);
        }

        @Override
        public void forget(String field) {
            unfinished.remove(field);
        }

        @Override
        public Optional<String> kept(String field) {
            return Optional.ofNullable(unfinished.get(field));
        }
    }
}

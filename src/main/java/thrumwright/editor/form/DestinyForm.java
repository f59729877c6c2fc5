package thrumwright.editor.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Label;
import thrumwright.piece.MadeFor;
import thrumwright.piece.Piece;

/** The fields of what becomes of a piece; until somebody says what it is made for there is only that one. */
record DestinyForm(Desk desk) {
    void addTo(FieldPanel panel) {
        FieldPanel.Section<Destiny> destiny =
                panel.about(Subject.always("destiny", Piece::destiny, Piece::withDestiny));
        destiny.oneOrNone(
                "for", "made-for", "choice.unknown", MadeFor.values(), Destiny::madeFor, Destiny::withMadeFor);
        when(panel, Destiny::mounted, () -> destiny.lengthOrNone("for.border", Destiny::border, Destiny::withBorder));
        when(panel, Destiny::hung, () -> destiny.flag("for.lined", Destiny::lined, Destiny::withLined));
        when(panel, DestinyForm::said, () -> destiny.flag("for.cord", DestinyForm::corded, this::withCord));
        when(panel, one -> said(one) && corded(one), () -> cord(destiny));
        when(
                panel,
                DestinyForm::said,
                () -> destiny.flag("for.label", one -> one.label().isPresent(), DestinyForm::withLabel));
        when(panel, one -> said(one) && one.label().isPresent(), () -> label(destiny));
    }

    private void when(FieldPanel panel, Predicate<Destiny> seen, Runnable add) {
        panel.shownWhile(() -> seen.test(desk.session().piece().destiny()), add);
    }

    private static boolean said(Destiny destiny) {
        return destiny.madeFor().isPresent();
    }

    private static boolean corded(Destiny destiny) {
        return destiny.cord().isPresent();
    }

    private void cord(FieldPanel.Section<Destiny> destiny) {
        destiny.choice(
                "for.cord-along",
                this::edges,
                one -> one.cord().map(EdgeCord::along),
                cord((part, along) -> part.withAlong(along.orElseThrow())));
        destiny.lengthOrNone(
                "for.cord-thick",
                one -> one.cord().map(EdgeCord::thick),
                cord((part, thick) -> part.withThick(thick.orElseThrow(this::missing))));
        destiny.flag(
                "for.cord-plaited",
                one -> one.cord().filter(EdgeCord::plaited).isPresent(),
                cord(EdgeCord::withPlaited));
    }

    private List<Choice<Optional<EdgeCord.Along>>> edges() {
        return Arrays.stream(EdgeCord.Along.values())
                .map(along -> Choice.of(Optional.of(along), desk.texts().name("along", along)))
                .toList();
    }

    private static <V> BiFunction<Destiny, V, Destiny> cord(BiFunction<EdgeCord, V, EdgeCord> with) {
        return (destiny, value) -> destiny.withCord(destiny.cord().map(cord -> with.apply(cord, value)));
    }

    private static void label(FieldPanel.Section<Destiny> destiny) {
        destiny.text(
                "for.maker",
                one -> one.label().map(Label::maker).orElse(""),
                labelled((label, typed) -> label.withMaker(typed.strip())));
        destiny.text(
                "for.year",
                one -> one.label().map(Label::year).orElse(""),
                labelled((label, typed) -> label.withYear(typed.strip())));
    }

    private static BiFunction<Destiny, String, Destiny> labelled(BiFunction<Label, String, Label> with) {
        return (destiny, typed) -> destiny.withLabel(destiny.label().map(label -> with.apply(label, typed)));
    }

    private BadMeasure missing() {
        return new BadMeasure(desk.texts().say("reason.needed"));
    }

    private Destiny withCord(Destiny destiny, boolean wanted) {
        boolean inches = desk.session().piece().habits().units() == UnitSystem.INCHES;
        EdgeCord usual = new EdgeCord(EdgeCord.Along.ENDS, Length.parse(inches ? "3/16 in" : "4 mm"), false);
        return destiny.withCord(wanted ? Optional.of(destiny.cord().orElse(usual)) : Optional.empty());
    }

    private static Destiny withLabel(Destiny destiny, boolean wanted) {
        return destiny.withLabel(wanted ? Optional.of(destiny.label().orElse(new Label("", ""))) : Optional.empty());
    }
}

package thrumwright.editor.form;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import thrumwright.editor.look.LoomIcon;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.LoomKinds;
import thrumwright.piece.Piece;
import thrumwright.piece.Sheds;
import thrumwright.plan.words.RoomWords;

/** The fields of the loom; those of a kind are there on a loom of that kind only. */
record LoomForm(Desk desk) {
    void addTo(FieldPanel panel) {
        panel.heading("heading.loom");
        FieldPanel.Section<Loom> loom = panel.about(Subject.always("loom", Piece::loom, Piece::withLoom));
        panel.wide(new LoomButton(desk).button());
        loom.text("loom.name", Loom::name, (part, typed) -> part.withName(typed.strip()));
        FieldPanel.Section<Piece> whole =
                panel.about(Subject.always("loom.whole", piece -> piece, (old, piece) -> piece));
        whole.choice("loom.kind", this::kinds, piece -> piece.loom().kind().key(), LoomForm::withKind);
        panel.prose(() -> desk.texts().say("loom-kind." + kind().key() + ".is"));
        ofKind(panel, loom);
        loom.length("loom.open", Loom::open, Loom::withOpen);
        posts(loom);
        picture(panel);
        loom.oneOf("loom.sheds", "sheds", Sheds.values(), Loom::sheds, Loom::withSheds);
        room(panel, whole, loom);
    }

    private void picture(FieldPanel panel) {
        JLabel picture = new JLabel();
        picture.setHorizontalAlignment(SwingConstants.CENTER);
        Field follow = () -> {
            picture.setIcon(new LoomIcon(kind(), 180, 84));
            picture.getAccessibleContext().setAccessibleName(desk.texts().say("loom-kind." + kind().key() + ".is"));
        };
        follow.refresh();
        panel.wide(picture);
        panel.follow(follow);
    }

    private LoomKind kind() {
        return desk.session().piece().loom().kind();
    }

    private List<Choice<String>> kinds() {
        return LoomKinds.all(desk.session().piece()).stream()
                .map(kind ->
                        new Choice<>(kind.key(), desk.texts().say("loom-kind." + kind.key()), LoomIcon.small(kind)))
                .toList();
    }

    private static Piece withKind(Piece piece, String key) {
        boolean same = piece.loom().kind().key().equals(key);
        return same ? piece : piece.withLoom(piece.loom().withKind(LoomKinds.of(key, piece)));
    }

    private void ofKind(FieldPanel panel, FieldPanel.Section<Loom> loom) {
        only(
                LoomKind.RoundFrame.class,
                panel,
                () -> loom.choice(
                        "loom.spacer",
                        () -> Arrays.stream(LoomKind.Spacer.values())
                                .map(spacer -> Choice.of(
                                        Optional.of(spacer), desk.texts().name("spacer", spacer)))
                                .toList(),
                        told(LoomKind.RoundFrame.class, LoomKind.RoundFrame::spacer),
                        (part, spacer) -> part.withKind(new LoomKind.RoundFrame(spacer.orElseThrow()))));
        only(
                LoomKind.JoiningBar.class,
                panel,
                () -> loom.lengthOrNone(
                        "loom.joining",
                        told(LoomKind.JoiningBar.class, LoomKind.JoiningBar::above),
                        (part, above) -> part.withKind(new LoomKind.JoiningBar(above.orElseThrow(this::missing)))));
        only(
                LoomKind.Pegged.class,
                panel,
                () -> loom.measure(
                        "loom.pitch",
                        told(LoomKind.Pegged.class, pegs -> pegs.pitch().text()).andThen(pitch -> pitch.orElse("")),
                        (part, typed) -> part.withKind(repitched(part.kind(), typed))));
        only(
                LoomKind.Rollers.class,
                panel,
                () -> loom.lengthOrNone(
                        "loom.waste",
                        told(LoomKind.Rollers.class, LoomKind.Rollers::waste),
                        (part, waste) -> part.withKind(new LoomKind.Rollers(waste.orElseThrow(this::missing)))));
    }

    private BadMeasure missing() {
        return new BadMeasure(desk.texts().say("reason.needed"));
    }

    private static LoomKind repitched(LoomKind kind, String typed) {
        return kind instanceof LoomKind.Pegged pegs ? new LoomKind.Pegged(Sett.parse(typed), pegs.peg()) : kind;
    }

    /** What a kind says of itself, where the loom is of that kind. */
    private static <K extends LoomKind, V> Function<Loom, Optional<V>> told(Class<K> sort, Function<K, V> fact) {
        return loom -> Optional.of(loom.kind())
                .filter(sort::isInstance)
                .map(sort::cast)
                .map(fact);
    }

    private void only(Class<? extends LoomKind> sort, FieldPanel panel, Runnable add) {
        panel.shownWhile(() -> sort.isInstance(kind()), add);
    }

    private void posts(FieldPanel.Section<Loom> loom) {
        loom.lengthOrNone(
                "loom.post",
                part -> part.uprights().map(Loom.Uprights::diameter),
                (part, thick) -> posts(part, thick, part.uprights().map(Loom.Uprights::gap)));
        loom.lengthOrNone("loom.gap", part -> part.uprights().map(Loom.Uprights::gap), this::gap);
    }

    private Loom gap(Loom part, Optional<Length> gap) {
        if (part.uprights().isEmpty() && gap.isPresent()) {
            throw new BadMeasure(desk.texts().say("reason.posts"));
        }
        return posts(part, part.uprights().map(Loom.Uprights::diameter), gap);
    }

    /** Posts need a thickness; without it the loom has none. */
    private Loom posts(Loom part, Optional<Length> diameter, Optional<Length> gap) {
        return part.withUprights(diameter.map(thick -> new Loom.Uprights(thick, gap.orElseGet(this::usualGap))));
    }

    private Length usualGap() {
        boolean inches = desk.session().piece().habits().units() == UnitSystem.INCHES;
        return Length.parse(inches ? "1 1/4 in" : "3 cm");
    }

    /** What stays free is as usual until somebody wants to say it. */
    private void room(FieldPanel panel, FieldPanel.Section<Piece> whole, FieldPanel.Section<Loom> loom) {
        Predicate<Piece> usual = piece -> piece.loom().leavesAsUsual();
        whole.flag(
                "loom.usual",
                usual,
                (piece, wanted) -> piece.withLoom(
                        wanted
                                ? piece.loom().leavingAsUsual()
                                : new RoomWords(desk.texts().locale()).typed(piece)));
        panel.advice(
                () -> new RoomWords(desk.texts().locale()).of(desk.session().plan()));
        panel.shownWhile(() -> !usual.test(desk.session().piece()), () -> {
            loom.lengthOrNone("loom.clearance", Loom::clearance, Loom::withClearance);
            loom.lengthOrNone("loom.room", Loom::workingRoom, Loom::withWorkingRoom);
            loom.lengthOrNone("loom.warp", Loom::warpPerEnd, Loom::withWarpPerEnd);
        });
    }
}

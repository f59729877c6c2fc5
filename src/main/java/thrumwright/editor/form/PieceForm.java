package thrumwright.editor.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;

/** The fields of the piece as a whole, its loom and warp, and the weaver's habits. */
record PieceForm(Desk desk) {
    Filling piece() {
        FieldPanel panel = new FieldPanel(desk);
        FieldPanel.Section<Design> design = panel.about(Subject.always("design", Piece::design, Piece::withDesign));
        return new Filling(panel)
                .then(() -> title(panel))
                .then(() -> new DestinyForm(desk).addTo(panel))
                .then(() -> design(panel, design))
                .then(() -> new StripeFields(desk).addTo(panel, design))
                .then(() -> designEnds(design))
                .then(() -> top(panel));
    }

    private static void title(FieldPanel panel) {
        panel.heading("heading.piece");
        FieldPanel.Section<Piece> whole = panel.about(Subject.always("piece", piece -> piece, (piece, other) -> other));
        whole.text("title", Piece::title, (piece, typed) -> piece.withTitle(typed.strip()));
        whole.lines("note", Piece::note, Piece::withNote);
    }

    private void design(FieldPanel panel, FieldPanel.Section<Design> design) {
        panel.heading("heading.design");
        design.length("design.height", Design::height, Design::withHeight);
        design.choice("design.first", this::yarns, Design::firstYarnId, Design::withFirstYarn);
        design.choice("design.last", this::yarns, Design::lastYarnId, Design::withLastYarn);
    }

    private void designEnds(FieldPanel.Section<Design> design) {
        design.choice("design.shed", this::lastSheds, Design::lastShed, Design::withLastShed);
        design.oneOrNone("design.side", "side", "choice.unknown", Side.values(), Design::lastSide, this::withLastSide)
                .percent("design.relaxing", Design::relaxing, Design::withRelaxing);
    }

    private void top(FieldPanel panel) {
        panel.heading("heading.top");
        new TopFields(desk).addTo(panel);
    }

    private List<Choice<Optional<Shed>>> lastSheds() {
        Side ended = desk.session().plan().afterDesign().side();
        return BlockFields.sheds(desk, "choice.unknown", ended.other());
    }

    private Design withLastSide(Design part, Optional<Side> side) {
        return part.endingAt(side, desk.session().piece().warp().ends());
    }

    /** All yarns of the piece, with their colours. */
    List<Choice<String>> yarns() {
        return desk.session().piece().yarns().stream()
                .map(yarn -> new Choice<>(yarn.id(), yarn.name(), new Swatch(yarn.colour())))
                .toList();
    }

    Filling loom() {
        FieldPanel panel = new FieldPanel(desk);
        return new Filling(panel)
                .then(() -> warp(panel))
                .then(() -> new LoomForm(desk).addTo(panel))
                .then(() -> advice(panel));
    }

    private void advice(FieldPanel panel) {
        panel.heading("heading.advice");
        panel.advice(() -> Advising.warp(desk.session().shown(), desk.texts().locale()));
    }

    private void warp(FieldPanel panel) {
        panel.heading("heading.warp");
        FieldPanel.Section<Warp> warp = panel.about(Subject.always("warp", Piece::warp, Piece::withWarp));
        warp.length("warp.width", Warp::width, Warp::withWidth);
        warp.measure("warp.sett", part -> part.sett().text(), (part, typed) -> part.withSett(Sett.parse(typed)));
        warp.choice("warp.yarn", this::yarns, Warp::yarnId, Warp::withYarn);
        panel.prose(() -> desk.texts()
                .say(
                        "warp.ends",
                        Map.of(
                                "ends",
                                desk.session().shown().warp().ends(),
                                "yarn",
                                desk.session()
                                        .shown()
                                        .shown()
                                        .total(desk.session().plan().warpYarn()))));
        warp.lengthOrNone("warp.woven", Warp::woven, Warp::withWoven);
        panel.prose(() -> MeasuredWords.width(desk.session().plan(), desk.texts()));
    }

    Filling habits() {
        FieldPanel panel = new FieldPanel(desk);
        return new Filling(panel).then(() -> habits(panel));
    }

    private static void habits(FieldPanel panel) {
        panel.heading("heading.habits");
        FieldPanel.Section<Habits> habits = panel.about(Subject.always("habits", Piece::habits, Piece::withHabits));
        habits.oneOf("habits.units", "units", UnitSystem.values(), Habits::units, Habits::withUnits)
                .oneOf("habits.widths", "widths", Habits.WidthsOf.values(), Habits::widthsOf, Habits::withWidthsOf)
                .length("habits.step", Habits::step, Habits::withStep)
                .length("habits.tail", Habits::tail, Habits::withTail)
                .length("habits.tie", Habits::tie, Habits::withTie)
                .percent("habits.ease", Habits::ease, Habits::withEase)
                .length("habits.handful", Habits::handful, Habits::withHandful)
                .length("habits.overlap", Habits::overlap, Habits::withOverlap);
    }
}

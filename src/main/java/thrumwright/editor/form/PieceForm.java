package thrumwright.editor.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;

/** The fields of the piece as a whole, its loom and warp, and the weaver's habits. */
final class PieceForm {
    private final Desk desk;
    private final Typing typing;

    PieceForm(Desk desk) {
        this.desk = desk;
        this.typing = new Typing(desk.texts());
    }

    private Piece piece() {
        return desk.session().piece();
    }

    private Length length(String typed) {
        return Typing.length(typed, piece());
    }

    FieldPanel piecePanel() {
        FieldPanel panel = new FieldPanel(desk);
        panel.heading("heading.piece");
        FieldPanel.Section<Piece> whole = panel.about(Subject.always("piece", piece -> piece, (piece, other) -> other));
        whole.text("title", Piece::title, (piece, typed) -> piece.withTitle(typed.strip()));
        whole.lines("note", Piece::note, Piece::withNote);
        design(panel);
        panel.heading("heading.top");
        new TopFields(desk).addTo(panel);
        return panel;
    }

    private void design(FieldPanel panel) {
        panel.heading("heading.design");
        FieldPanel.Section<Design> design = panel.about(Subject.always("design", Piece::design, Piece::withDesign));
        design.measure(
                "design.height",
                part -> part.height().text(),
                (part, typed) -> new Design(
                        length(typed),
                        part.firstYarnId(),
                        part.lastYarnId(),
                        part.lastShed(),
                        part.lastSide(),
                        part.relaxing()));
        design.choice(
                "design.first",
                this::yarns,
                Design::firstYarnId,
                (part, id) -> new Design(
                        part.height(), id, part.lastYarnId(), part.lastShed(), part.lastSide(), part.relaxing()));
        design.choice(
                "design.last",
                this::yarns,
                Design::lastYarnId,
                (part, id) -> new Design(
                        part.height(), part.firstYarnId(), id, part.lastShed(), part.lastSide(), part.relaxing()));
        design.oneOrNone(
                "design.shed",
                "shed",
                "choice.unknown",
                Shed.values(),
                Design::lastShed,
                (part, shed) -> new Design(
                        part.height(), part.firstYarnId(), part.lastYarnId(), shed, part.lastSide(), part.relaxing()));
        design.oneOrNone(
                "design.side",
                "side",
                "choice.unknown",
                Side.values(),
                Design::lastSide,
                (part, side) -> new Design(
                        part.height(), part.firstYarnId(), part.lastYarnId(), part.lastShed(), side, part.relaxing()));
        design.measure(
                "design.relaxing",
                part -> Typing.percent(part.relaxing()),
                (part, typed) -> new Design(
                        part.height(),
                        part.firstYarnId(),
                        part.lastYarnId(),
                        part.lastShed(),
                        part.lastSide(),
                        typing.percent(typed)));
    }

    /** All yarns of the piece, with their colours. */
    private List<Choice<String>> yarns() {
        return piece().yarns().stream()
                .map(yarn -> new Choice<>(yarn.id(), yarn.name(), new Swatch(yarn.colour())))
                .toList();
    }

    FieldPanel loomPanel() {
        FieldPanel panel = new FieldPanel(desk);
        panel.heading("heading.warp");
        FieldPanel.Section<Warp> warp = panel.about(Subject.always("warp", Piece::warp, Piece::withWarp));
        warp.measure("warp.width", part -> part.width().text(), (part, typed) -> part.withWidth(length(typed)));
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
        warp.measure(
                "warp.woven",
                part -> part.woven().map(Length::text).orElse(""),
                (part, typed) -> part.withWoven(Typing.lengthOrNone(typed, piece())));
        panel.prose(() -> Measured.width(desk.session().plan(), desk.texts()));
        panel.heading("heading.advice");
        panel.prose(() -> Advising.warp(desk.session().shown(), desk.texts().locale()));
        loom(panel);
        return panel;
    }

    private void loom(FieldPanel panel) {
        panel.heading("heading.loom");
        FieldPanel.Section<Loom> loom = panel.about(Subject.always("loom", Piece::loom, Piece::withLoom));
        loom.text("loom.name", Loom::name, (part, typed) -> loom(part, typed.strip(), part.open(), part.clearance()));
        loom.measure(
                "loom.open",
                part -> part.open().text(),
                (part, typed) -> loom(part, part.name(), length(typed), part.clearance()));
        loom.measure(
                "loom.post",
                part -> part.uprights().map(posts -> posts.diameter().text()).orElse(""),
                (part, typed) -> posts(
                        part,
                        Typing.lengthOrNone(typed, piece()),
                        part.uprights().map(Loom.Uprights::gap)));
        loom.measure(
                "loom.gap",
                part -> part.uprights().map(posts -> posts.gap().text()).orElse(""),
                this::gap);
        loom.measure(
                "loom.clearance",
                part -> part.clearance().text(),
                (part, typed) -> loom(part, part.name(), part.open(), length(typed)));
        loom.measure(
                "loom.room",
                part -> part.workingRoom().text(),
                (part, typed) -> new Loom(
                        part.name(), part.open(), part.uprights(), part.clearance(), length(typed), part.warpPerEnd()));
        loom.measure(
                "loom.warp",
                part -> part.warpPerEnd().text(),
                (part, typed) -> new Loom(
                        part.name(),
                        part.open(),
                        part.uprights(),
                        part.clearance(),
                        part.workingRoom(),
                        length(typed)));
    }

    private static Loom loom(Loom part, String name, Length open, Length clearance) {
        return new Loom(name, open, part.uprights(), clearance, part.workingRoom(), part.warpPerEnd());
    }

    private Loom gap(Loom part, String typed) {
        if (part.uprights().isEmpty() && !typed.isBlank()) {
            throw new BadMeasure(desk.texts().say("reason.posts"));
        }
        return posts(part, part.uprights().map(Loom.Uprights::diameter), Typing.lengthOrNone(typed, piece()));
    }

    /** Posts need a thickness; without it the loom has none. */
    private static Loom posts(Loom part, Optional<Length> diameter, Optional<Length> gap) {
        Optional<Loom.Uprights> uprights =
                diameter.map(thick -> new Loom.Uprights(thick, gap.orElse(Length.parse("3 cm"))));
        return new Loom(part.name(), part.open(), uprights, part.clearance(), part.workingRoom(), part.warpPerEnd());
    }

    FieldPanel habitsPanel() {
        FieldPanel panel = new FieldPanel(desk);
        panel.heading("heading.habits");
        FieldPanel.Section<Habits> habits = panel.about(Subject.always("habits", Piece::habits, Piece::withHabits));
        habits.oneOf(
                "habits.units",
                "units",
                UnitSystem.values(),
                Habits::units,
                (part, units) -> new Habits(
                        units,
                        part.widthsOf(),
                        part.step(),
                        part.tail(),
                        part.tie(),
                        part.ease(),
                        part.handful(),
                        part.overlap()));
        habits.oneOf(
                "habits.widths",
                "widths",
                Habits.WidthsOf.values(),
                Habits::widthsOf,
                (part, widths) -> new Habits(
                        part.units(),
                        widths,
                        part.step(),
                        part.tail(),
                        part.tie(),
                        part.ease(),
                        part.handful(),
                        part.overlap()));
        habits.measure(
                "habits.step",
                part -> part.step().text(),
                (part, typed) -> habits(part, length(typed), part.tail(), part.tie(), part.ease()));
        habits.measure(
                "habits.tail",
                part -> part.tail().text(),
                (part, typed) -> habits(part, part.step(), length(typed), part.tie(), part.ease()));
        habits.measure(
                "habits.tie",
                part -> part.tie().text(),
                (part, typed) -> habits(part, part.step(), part.tail(), length(typed), part.ease()));
        habits.measure(
                "habits.ease",
                part -> Typing.percent(part.ease()),
                (part, typed) -> habits(part, part.step(), part.tail(), part.tie(), typing.percent(typed)));
        habits.measure(
                "habits.handful",
                part -> part.handful().text(),
                (part, typed) -> butterflies(part, length(typed), part.overlap()));
        habits.measure(
                "habits.overlap",
                part -> part.overlap().text(),
                (part, typed) -> butterflies(part, part.handful(), length(typed)));
        return panel;
    }

    private static Habits habits(Habits part, Length step, Length tail, Length tie, double ease) {
        return new Habits(part.units(), part.widthsOf(), step, tail, tie, ease, part.handful(), part.overlap());
    }

    private static Habits butterflies(Habits part, Length handful, Length overlap) {
        return new Habits(
                part.units(), part.widthsOf(), part.step(), part.tail(), part.tie(), part.ease(), handful, overlap);
    }
}

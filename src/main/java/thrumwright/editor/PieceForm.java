package thrumwright.editor;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Decimals;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.plan.Words;
import thrumwright.yarn.Yarn;

/** The form of the piece: title, loom, warp, materials, design and the weaver's habits. */
final class PieceForm {
    private final Session session;
    private final Phrases phrases;
    private final Words words = new Words(Locale.UK);
    private final FormPanel form;

    private PieceForm(Session session, Phrases phrases) {
        this.session = session;
        this.phrases = phrases;
        this.form = new FormPanel(phrases);
    }

    static FormPanel of(Session session, Phrases phrases) {
        PieceForm form = new PieceForm(session, phrases);
        form.build();
        session.listen(form.form::refresh);
        form.form.refresh();
        return form.form;
    }

    private void build() {
        form.heading("piece.heading");
        form.field("piece.title", () -> piece().title(), text -> change("piece.title", p -> p.withTitle(text.strip())));
        form.field("piece.note", () -> piece().note(), text -> change("piece.note", p -> p.withNote(text.strip())));
        warp();
        loom();
        design();
        materials();
        habits();
    }

    private Piece piece() {
        return session.piece();
    }

    private void change(String key, UnaryOperator<Piece> change) {
        session.apply(Edits.piece(
                phrases.say("edit.piece", Map.of("what", phrases.say(key).toLowerCase(Locale.UK))), change));
    }

    private Length length(String text) {
        return Length.parse(text, piece().habits().units().usual());
    }

    private void warp() {
        form.heading("warp.heading");
        warpField("warp.width", w -> w.width().text(), (w, text) -> new Warp(length(text), w.sett(), w.yarnId()));
        warpField("warp.sett", w -> w.sett().text(), (w, text) -> new Warp(w.width(), Sett.parse(text), w.yarnId()));
        yarnChoice(
                "warp.yarn",
                p -> p.warp().yarnId(),
                (p, id) -> p.withWarp(new Warp(p.warp().width(), p.warp().sett(), id)));
        form.text(
                "warp.facts",
                () -> phrases.say(
                        "warp.facts",
                        Map.of(
                                "ends", piece().warp().ends(),
                                "yarn", piece().shown().total(session.plan().warpYarn()))));
    }

    /** Makes something of another with one value changed. */
    private interface Changer<P, T> {
        P changed(P part, T value);
    }

    private void warpField(String key, Function<Warp, String> value, Changer<Warp, String> changer) {
        form.field(
                key,
                () -> value.apply(piece().warp()),
                text -> change(key, p -> p.withWarp(changer.changed(p.warp(), text))));
    }

    private void loom() {
        form.heading("loom.heading");
        loomField(
                "loom.name",
                Loom::name,
                (l, text) ->
                        new Loom(text.strip(), l.open(), l.uprights(), l.clearance(), l.workingRoom(), l.warpPerEnd()));
        loomField(
                "loom.open",
                l -> l.open().text(),
                (l, text) ->
                        new Loom(l.name(), length(text), l.uprights(), l.clearance(), l.workingRoom(), l.warpPerEnd()));
        loomField(
                "loom.posts",
                l -> l.uprights().map(u -> u.diameter().text()).orElse(""),
                (l, text) -> withPosts(
                        l,
                        text.isBlank()
                                ? Optional.empty()
                                : Optional.of(new Loom.Uprights(
                                        length(text),
                                        l.uprights().map(Loom.Uprights::gap).orElse(Length.parse("25 mm"))))));
        loomField("loom.gap", l -> l.uprights().map(u -> u.gap().text()).orElse(""), (l, text) -> {
            Loom.Uprights posts = l.uprights().orElseThrow(() -> new BadMeasure(phrases.say("wrong.no-posts")));
            return withPosts(l, Optional.of(new Loom.Uprights(posts.diameter(), length(text))));
        });
        loomField(
                "loom.clearance",
                l -> l.clearance().text(),
                (l, text) -> new Loom(l.name(), l.open(), l.uprights(), length(text), l.workingRoom(), l.warpPerEnd()));
        loomField(
                "loom.room",
                l -> l.workingRoom().text(),
                (l, text) -> new Loom(l.name(), l.open(), l.uprights(), l.clearance(), length(text), l.warpPerEnd()));
        loomField(
                "loom.per-end",
                l -> l.warpPerEnd().text(),
                (l, text) -> new Loom(l.name(), l.open(), l.uprights(), l.clearance(), l.workingRoom(), length(text)));
    }

    private static Loom withPosts(Loom l, Optional<Loom.Uprights> posts) {
        return new Loom(l.name(), l.open(), posts, l.clearance(), l.workingRoom(), l.warpPerEnd());
    }

    private void loomField(String key, Function<Loom, String> value, Changer<Loom, String> changer) {
        form.field(
                key,
                () -> value.apply(piece().loom()),
                text -> change(key, p -> p.withLoom(changer.changed(p.loom(), text))));
    }

    private void design() {
        form.heading("design.heading");
        designField(
                "design.height",
                d -> d.height().text(),
                (d, text) -> new Design(
                        length(text), d.firstYarnId(), d.lastYarnId(), d.lastShed(), d.lastSide(), d.relaxing()));
        yarnChoice("design.first", p -> p.design().firstYarnId(), (p, id) -> {
            Design d = p.design();
            return p.withDesign(new Design(d.height(), id, d.lastYarnId(), d.lastShed(), d.lastSide(), d.relaxing()));
        });
        yarnChoice("design.last", p -> p.design().lastYarnId(), (p, id) -> {
            Design d = p.design();
            return p.withDesign(new Design(d.height(), d.firstYarnId(), id, d.lastShed(), d.lastSide(), d.relaxing()));
        });
        lastPick();
        designField(
                "design.relaxing",
                d -> percent(d.relaxing()),
                (d, text) -> new Design(
                        d.height(), d.firstYarnId(), d.lastYarnId(), d.lastShed(), d.lastSide(), percent(text)));
        form.text("design.facts", this::designFacts);
    }

    private void designField(String key, Function<Design, String> value, Changer<Design, String> changer) {
        form.field(
                key,
                () -> value.apply(piece().design()),
                text -> change(key, p -> p.withDesign(changer.changed(p.design(), text))));
    }

    private void lastPick() {
        Map<Optional<Shed>, String> sheds = new LinkedHashMap<>();
        sheds.put(Optional.empty(), phrases.say("design.unknown"));
        for (Shed shed : Shed.values()) {
            sheds.put(Optional.of(shed), words.shed(shed));
        }
        form.choice(
                "design.last-shed",
                () -> sheds,
                () -> piece().design().lastShed(),
                shed -> change("design.last-shed", p -> {
                    Design d = p.design();
                    return p.withDesign(
                            new Design(d.height(), d.firstYarnId(), d.lastYarnId(), shed, d.lastSide(), d.relaxing()));
                }));
        Map<Optional<Side>, String> sides = new LinkedHashMap<>();
        sides.put(Optional.empty(), phrases.say("design.unknown"));
        for (Side side : Side.values()) {
            sides.put(Optional.of(side), words.side(side));
        }
        form.choice(
                "design.last-side",
                () -> sides,
                () -> piece().design().lastSide(),
                side -> change("design.last-side", p -> {
                    Design d = p.design();
                    return p.withDesign(
                            new Design(d.height(), d.firstYarnId(), d.lastYarnId(), d.lastShed(), side, d.relaxing()));
                }));
    }

    private String designFacts() {
        Plan plan = session.plan();
        return phrases.say(
                "design.facts",
                Map.of(
                        "start", piece().shown().height(plan.budget().startLine()),
                        "stop", piece().shown().height(plan.budget().stopLine()),
                        "width", piece().shown().cut(plan.finishedWidth()),
                        "height", piece().shown().cut(plan.finishedHeight())));
    }

    private String percent(double share) {
        return Decimals.plain(share * 100, 2, Locale.ROOT) + " %";
    }

    private double percent(String text) {
        String digits = text.replace("%", "").replace(',', '.').strip();
        if (!digits.matches("\\d{1,3}(\\.\\d{1,4})?")) {
            throw new BadMeasure(phrases.say("wrong.percent", Map.of("typed", text)));
        }
        return Double.parseDouble(digits) / 100;
    }

    private void materials() {
        form.heading("materials.heading");
        yarnChoice("materials.cord", Piece::cordId, Piece::withCord);
        yarnChoice("materials.waste", Piece::wasteId, Piece::withWaste);
    }

    private void yarnChoice(String key, Function<Piece, String> value, Changer<Piece, String> changer) {
        form.choice(key, this::yarns, () -> value.apply(piece()), id -> change(key, p -> changer.changed(p, id)));
    }

    private Map<String, String> yarns() {
        Map<String, String> yarns = new LinkedHashMap<>();
        for (Yarn yarn : piece().yarns()) {
            yarns.put(yarn.id(), yarn.name());
        }
        return yarns;
    }

    private void habits() {
        form.heading("habits.heading");
        form.choice(
                "habits.units",
                () -> FormPanel.named(UnitSystem.class, each -> phrases.say("units." + each)),
                () -> piece().habits().units(),
                units -> change("habits.units", p -> {
                    Habits h = p.habits();
                    return p.withHabits(new Habits(
                            units, h.widthsOf(), h.step(), h.tail(), h.tie(), h.ease(), h.handful(), h.overlap()));
                }));
        form.choice(
                "habits.widths",
                () -> FormPanel.named(Habits.WidthsOf.class, each -> phrases.say("widths." + each)),
                () -> piece().habits().widthsOf(),
                of -> change("habits.widths", p -> {
                    Habits h = p.habits();
                    return p.withHabits(
                            new Habits(h.units(), of, h.step(), h.tail(), h.tie(), h.ease(), h.handful(), h.overlap()));
                }));
        habit(
                "habits.step",
                h -> h.step().text(),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), length(text), h.tail(), h.tie(), h.ease(), h.handful(), h.overlap()));
        habit(
                "habits.tail",
                h -> h.tail().text(),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), h.step(), length(text), h.tie(), h.ease(), h.handful(), h.overlap()));
        habit(
                "habits.tie",
                h -> h.tie().text(),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), h.step(), h.tail(), length(text), h.ease(), h.handful(), h.overlap()));
        habit(
                "habits.ease",
                h -> percent(h.ease()),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), h.step(), h.tail(), h.tie(), percent(text), h.handful(), h.overlap()));
        habit(
                "habits.butterfly",
                h -> h.handful().text(),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), h.step(), h.tail(), h.tie(), h.ease(), length(text), h.overlap()));
        habit(
                "habits.overlap",
                h -> h.overlap().text(),
                (h, text) -> new Habits(
                        h.units(), h.widthsOf(), h.step(), h.tail(), h.tie(), h.ease(), h.handful(), length(text)));
    }

    private void habit(String key, Function<Habits, String> value, Changer<Habits, String> changer) {
        Consumer<String> taker = text -> change(key, p -> p.withHabits(changer.changed(p.habits(), text)));
        form.field(key, () -> value.apply(piece().habits()), taker);
    }
}

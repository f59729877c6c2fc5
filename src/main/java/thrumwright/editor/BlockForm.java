package thrumwright.editor;

import java.awt.BorderLayout;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import thrumwright.block.Amount;
import thrumwright.block.Block;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.OpenWarp;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.Tag;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.YarnBlock;
import thrumwright.editor.edit.Chosen;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.measure.Unit;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Cut;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Words;
import thrumwright.plan.Work;
import thrumwright.yarn.Yarn;

/** The form of the chosen block: only the fields that it has. */
final class BlockForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final transient Phrases phrases;
    private final transient Words words = new Words(Locale.UK);
    private final transient Actions actions;
    private FormPanel form;
    private transient Object shownFor = "";

    BlockForm(Session session, Phrases phrases, Actions actions) {
        super(new BorderLayout());
        this.session = session;
        this.phrases = phrases;
        this.actions = actions;
        session.listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Object key = key();
        if (!key.equals(shownFor)) {
            shownFor = key;
            removeAll();
            form = new FormPanel(phrases);
            build();
            JScrollPane scroll = new JScrollPane(form);
            scroll.setBorder(null);
            add(scroll);
            revalidate();
            repaint();
        }
        form.refresh();
    }

    /** The form is built anew when another block is chosen, or the chosen one can be edited or not any more. */
    private Object key() {
        return session.chosen()
                .map(chosen -> chosen + " " + Words.key(block()) + " " + editable() + " "
                        + session.piece().topFollows())
                .orElse("nothing");
    }

    private boolean editable() {
        return session.chosen()
                .map(chosen -> chosen.place() == Place.START || !session.piece().topFollows())
                .orElse(false);
    }

    private Chosen chosen() {
        return session.chosen().orElseThrow();
    }

    private Block block() {
        return session.piece().block(chosen().place(), chosen().blockId()).orElseThrow();
    }

    private BlockPlan plan() {
        return session.plan().end(chosen().place()).block(chosen().blockId()).orElseThrow();
    }

    private void build() {
        if (session.chosen().isEmpty()) {
            form.text("block.none", () -> phrases.say("block.none"));
            return;
        }
        form.text(
                "block.title",
                () -> "<b>" + Html.escaped(words.name(block())) + "</b>, " + words.place(chosen().place()));
        form.text("block.about", () -> phrases.say("about." + Words.key(block())));
        if (!editable()) {
            form.text("block.follows", () -> phrases.say("block.follows"));
            form.wide(new JButton(actions.get("top-alone")));
        } else {
            form.field(
                    "block.label",
                    () -> block().tag().label(),
                    text -> change(block().withTag(new Tag(block().id(), text.strip()))));
            fields(block());
        }
        if (chosen().place() == Place.START && session.piece().topFollows()) {
            form.tick(
                    "block.left-out",
                    this::leftOut,
                    out -> session.apply(Edits.leaveOut(phrases.say("edit.left-out"), chosen().blockId(), out)));
        }
        form.heading("block.computed");
        form.text("block.facts", this::facts);
    }

    private boolean leftOut() {
        return session.piece().top() instanceof Top.FollowsStart follows
                && follows.leftOut().contains(chosen().blockId());
    }

    private void change(Block other) {
        session.apply(Edits.replace(
                phrases.say("edit.change", Map.of("block", words.name(block()))), chosen().place(), other));
    }

    private void fields(Block block) {
        if (block instanceof OrderingCord) {
            whole("block.picks", OrderingCord.class, OrderingCord::picks, OrderingCord::withPicks);
            shed(
                    OrderingCord.class,
                    OrderingCord::firstShed,
                    (cord, shed) -> new OrderingCord(cord.tag(), cord.use(), cord.picks(), shed));
        } else if (block instanceof PlainBand) {
            band();
        } else if (block instanceof Twining) {
            twining();
        } else if (block instanceof Soumak) {
            soumak();
        } else if (block instanceof HalfHitch) {
            whole("block.rows", HalfHitch.class, HalfHitch::rows, HalfHitch::withRows);
            whole(
                    "block.group",
                    HalfHitch.class,
                    HalfHitch::endsPerGroup,
                    (hitch, ends) -> new HalfHitch(hitch.tag(), hitch.use(), hitch.rows(), ends));
        } else if (block instanceof HemFold) {
            fold();
        } else if (block instanceof OpenWarp) {
            length(
                    "block.height",
                    OpenWarp.class,
                    OpenWarp::height,
                    (open, height) -> new OpenWarp(open.tag(), height));
        } else {
            finish();
        }
        if (block instanceof YarnBlock) {
            use();
        }
    }

    private void band() {
        choice(
                "block.purpose",
                PlainBand.class,
                PlainBand.Purpose.class,
                "purpose.",
                PlainBand::purpose,
                (band, purpose) -> new PlainBand(band.tag(), band.use(), purpose, band.amount(), band.firstShed()));
        form.field(
                "block.amount",
                () -> as(PlainBand.class).amount().text(),
                text -> change(as(PlainBand.class).withAmount(Amount.parse(text))));
        shed(
                PlainBand.class,
                PlainBand::firstShed,
                (band, shed) -> new PlainBand(band.tag(), band.use(), band.purpose(), band.amount(), shed));
    }

    private void twining() {
        whole("block.rows", Twining.class, Twining::rows, Twining::withRows);
        whole(
                "block.group",
                Twining.class,
                Twining::endsPerGroup,
                (twining, ends) -> new Twining(
                        twining.tag(), twining.use(), twining.rows(), ends, twining.first(), twining.countered()));
        choice(
                "block.twist",
                Twining.class,
                Lean.class,
                "twist.",
                Twining::first,
                (twining, lean) -> new Twining(
                        twining.tag(),
                        twining.use(),
                        twining.rows(),
                        twining.endsPerGroup(),
                        lean,
                        twining.countered()));
        form.tick("block.countered", () -> as(Twining.class).countered(), countered -> {
            Twining t = as(Twining.class);
            change(new Twining(t.tag(), t.use(), t.rows(), t.endsPerGroup(), t.first(), countered));
        });
    }

    private void soumak() {
        whole("block.rows", Soumak.class, Soumak::rows, Soumak::withRows);
        whole(
                "block.over",
                Soumak.class,
                Soumak::over,
                (s, over) -> new Soumak(s.tag(), s.use(), s.rows(), over, s.under(), s.first(), s.countered()));
        whole(
                "block.under",
                Soumak.class,
                Soumak::under,
                (s, under) -> new Soumak(s.tag(), s.use(), s.rows(), s.over(), under, s.first(), s.countered()));
        choice(
                "block.slant",
                Soumak.class,
                Lean.class,
                "slant.",
                Soumak::first,
                (s, lean) -> new Soumak(s.tag(), s.use(), s.rows(), s.over(), s.under(), lean, s.countered()));
        form.tick("block.countered", () -> as(Soumak.class).countered(), countered -> {
            Soumak s = as(Soumak.class);
            change(new Soumak(s.tag(), s.use(), s.rows(), s.over(), s.under(), s.first(), countered));
        });
    }

    private void fold() {
        optionalLength("block.first-turn", () -> as(HemFold.class).firstTurn(), turn -> {
            HemFold fold = as(HemFold.class);
            change(new HemFold(fold.tag(), turn, fold.bar()));
        });
        optionalLength("block.bar", () -> as(HemFold.class).bar(), bar -> {
            HemFold fold = as(HemFold.class);
            change(new HemFold(fold.tag(), fold.firstTurn(), bar));
        });
    }

    private void finish() {
        choice(
                "block.ends",
                WarpFinish.class,
                WarpFinish.Kind.class,
                "ends.",
                WarpFinish::kind,
                (finish, kind) -> new WarpFinish(finish.tag(), kind, finish.endsPerGroup(), finish.hanging()));
        whole(
                "block.group",
                WarpFinish.class,
                WarpFinish::endsPerGroup,
                (finish, ends) -> new WarpFinish(finish.tag(), finish.kind(), ends, finish.hanging()));
        length(
                "block.hanging",
                WarpFinish.class,
                WarpFinish::hanging,
                (finish, hanging) -> new WarpFinish(finish.tag(), finish.kind(), finish.endsPerGroup(), hanging));
    }

    private void use() {
        form.choice(
                "block.material",
                this::materials,
                () -> use(block()).material(),
                material -> change(((YarnBlock) block()).withUse(use(block()).with(material))));
        form.tick(
                "block.comes-out",
                () -> use(block()).comesOut(),
                out -> change(((YarnBlock) block())
                        .withUse(new Use(
                                use(block()).material(), out, use(block()).from()))));
        Map<Optional<Side>, String> sides = new LinkedHashMap<>();
        sides.put(Optional.empty(), phrases.say("side.goes-on"));
        sides.put(Optional.of(Side.LEFT), phrases.say("side.left"));
        sides.put(Optional.of(Side.RIGHT), phrases.say("side.right"));
        form.choice(
                "block.from",
                () -> sides,
                () -> use(block()).from(),
                side -> change(((YarnBlock) block())
                        .withUse(new Use(use(block()).material(), use(block()).comesOut(), side))));
    }

    private static Use use(Block block) {
        return ((YarnBlock) block).use();
    }

    private Map<Material, String> materials() {
        Map<Material, String> materials = new LinkedHashMap<>();
        for (MaterialRole role : MaterialRole.values()) {
            Material part = new Material.Part(role);
            String yarn = session.piece().yarnOf(part, chosen().place()).name();
            materials.put(part, phrases.say("role." + role, Map.of("yarn", yarn)));
        }
        for (Yarn yarn : session.piece().yarns()) {
            materials.put(new Material.Own(yarn.id()), phrases.say("role.own", Map.of("yarn", yarn.name())));
        }
        return materials;
    }

    private <B extends Block> B as(Class<B> type) {
        return type.cast(block());
    }

    /** Makes a block of another with one value changed. */
    private interface Changer<B, T> {
        B changed(B block, T value);
    }

    private <B extends Block> void whole(
            String key, Class<B> type, Function<B, Integer> value, Changer<B, Integer> changer) {
        form.field(
                key,
                () -> String.valueOf(value.apply(as(type))),
                text -> change(changer.changed(as(type), wholeNumber(text))));
    }

    private int wholeNumber(String text) {
        if (!text.strip().matches("\\d{1,6}")) {
            throw new BadMeasure(phrases.say("wrong.whole", Map.of("typed", text)));
        }
        return Integer.parseInt(text.strip());
    }

    private <B extends Block> void length(
            String key, Class<B> type, Function<B, Length> value, Changer<B, Length> changer) {
        form.field(
                key,
                () -> value.apply(as(type)).text(),
                text -> change(changer.changed(as(type), Length.parse(text, usualUnit()))));
    }

    private void optionalLength(String key, Supplier<Optional<Length>> value, Consumer<Optional<Length>> taker) {
        form.field(
                key,
                () -> value.get().map(Length::text).orElse(""),
                text -> taker.accept(text.isBlank() ? Optional.empty() : Optional.of(Length.parse(text, usualUnit()))));
    }

    private Unit usualUnit() {
        return session.piece().habits().units().usual();
    }

    private <B extends Block, E extends Enum<E>> void choice(
            String key, Class<B> type, Class<E> values, String names, Function<B, E> value, Changer<B, E> changer) {
        form.choice(
                key,
                () -> FormPanel.named(values, each -> phrases.say(names + each)),
                () -> value.apply(as(type)),
                chosen -> change(changer.changed(as(type), chosen)));
    }

    private <B extends Block> void shed(
            Class<B> type, Function<B, Optional<Shed>> value, Changer<B, Optional<Shed>> changer) {
        Map<Optional<Shed>, String> sheds = new LinkedHashMap<>();
        sheds.put(Optional.empty(), phrases.say("shed.in-turn"));
        for (Shed shed : Shed.values()) {
            sheds.put(Optional.of(shed), words.shed(shed));
        }
        form.choice(
                "block.first-shed",
                () -> sheds,
                () -> value.apply(as(type)),
                shed -> change(changer.changed(as(type), shed)));
    }

    private String facts() {
        Shown shown = session.piece().shown();
        if (plan().work().isPresent()) {
            Work work = plan().work().get();
            Cut cut = work.cut();
            Map<String, Object> values = new LinkedHashMap<>();
            values.put("height", shown.height(plan().height()));
            values.put("rows", work.rows().size());
            values.put("yarn", Html.escaped(work.yarn().name()));
            values.put("exact", shown.cut(cut.exact()));
            values.put("cut", shown.cut(cut.length()));
            values.put("widths", shown.halves(cut.widths()));
            values.put("count", cut.butterflies().count());
            values.put("each", shown.cut(cut.butterflies().each()));
            values.put("begins", words.side(work.begins()));
            values.put("ends", words.side(work.ends()));
            return phrases.say(cut.butterflies().count() == 1 ? "facts.work" : "facts.work.shared", values);
        }
        EndPlan end = session.plan().end(chosen().place());
        if (block() instanceof HemFold && end.hem().isPresent()) {
            return phrases.say(
                    "facts.hem",
                    Map.of(
                            "depth", shown.height(end.hem().get().depth()),
                            "layers", end.hem().get().layers(),
                            "thickness", shown.height(end.hem().get().stacked())));
        }
        if (block() instanceof WarpFinish && end.finish().isPresent()) {
            return phrases.say(
                    "facts.finish",
                    Map.of(
                            "needed", shown.height(end.finish().get().needed()),
                            "free", shown.height(Math.max(0, end.finish().get().free())),
                            "groups", end.finish().get().groups().size()));
        }
        return phrases.say("facts.height", Map.of("height", shown.height(plan().height())));
    }
}

package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import thrumwright.block.Block;
import thrumwright.block.EdgeFinish;
import thrumwright.block.HalfHitch;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Lean;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.OrderingCord;
import thrumwright.block.OwnWords;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Support;
import thrumwright.block.TakesYarn;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Twining;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WrappedTassels;
import thrumwright.block.YarnBlock;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.edit.Selection;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.text.Texts;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.words.Words;
import thrumwright.sheet.OwnWording;

/** The fields of the selected block. */
final class BlockForm {
    private final Desk desk;
    private final Typing typing;
    private final Place place;
    private final String id;
    private final FieldPanel panel;

    private BlockForm(Desk desk, Place place, Block block) {
        this.desk = desk;
        this.typing = new Typing(desk.texts());
        this.place = place;
        this.id = block.id();
        this.panel = new FieldPanel(desk);
    }

    /** For the block that leads the selection; a word of advice where there is none. */
    static FieldPanel panel(Desk desk) {
        Selection selection = desk.session().selection();
        Optional<Block> lead = selection.leadIn(desk.session().shown());
        if (lead.isEmpty()) {
            FieldPanel empty = new FieldPanel(desk);
            empty.prose(() -> desk.texts().say("block.none"));
            return empty;
        }
        BlockForm form = new BlockForm(desk, selection.place(), lead.get());
        form.build(lead.get());
        return form.panel;
    }

    private void build(Block block) {
        Texts texts = desk.texts();
        panel.heading(this::whose);
        if (place == Place.TOP && desk.session().piece().topFollows()) {
            following();
            return;
        }
        FieldPanel.Section<Block> section = section(Block.class);
        section.text(
                "block.label",
                part -> part.tag().label(),
                (part, typed) -> part.withTag(part.tag().withLabel(typed.strip())));
        panel.prose(
                () -> desk.session().shown().block(place, id).map(this::about).orElse(""));
        if (Amounts.has(block)) {
            String key = block instanceof EdgeFinish ? "block.hanging" : "block.amount";
            section.text(
                    key,
                    Amounts::text,
                    (part, typed) -> Amounts.with(part, typed, desk.session().piece(), place));
        }
        ofItsKind(block);
        if (block instanceof YarnBlock) {
            yarn(block instanceof SpreadHeader);
        }
        if (place == Place.START && desk.session().piece().topFollows()) {
            repeatAtTop();
        }
        panel.heading("heading.comes-to");
        panel.prose(() -> BlockFacts.of(desk.session().plan(), place, id, texts));
        words(section);
    }

    /** The weaver's own wording of the step, and under it how it will stand on the sheet. */
    private void words(FieldPanel.Section<Block> section) {
        panel.heading("heading.words");
        JTextArea wording = section.lines(
                "block.words",
                part -> part.tag().words(),
                (part, typed) -> part.withTag(part.tag().withWords(typed.strip())));
        panel.underField(new PlaceButton(
                desk.texts(), () -> new OwnWording(desk.session().plan(), Locale.UK).offered(place, id), wording));
        panel.prose(
                () -> desk.session().shown().block(place, id).map(this::onSheet).orElse(""));
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

    /** What kind of block it is, and what such a block is good for. */
    private String about(Block block) {
        String kind = desk.texts().words().kind(block);
        return kind + ". " + desk.texts().say("about." + Words.key(block));
    }

    private <B extends Block> FieldPanel.Section<B> section(Class<B> kind) {
        String name = desk.session()
                .shown()
                .block(place, id)
                .map(desk.texts().words()::name)
                .orElse("");
        return panel.about(new Subject<B>(
                place + "/" + id,
                name,
                piece -> piece.block(place, id).filter(kind::isInstance).map(kind::cast),
                (piece, other) -> desk.edits().replaced(piece, place, other)));
    }

    private void ofItsKind(Block block) {
        if (block instanceof PlainBand) {
            FieldPanel.Section<PlainBand> band = section(PlainBand.class);
            band.oneOf(
                    "block.purpose",
                    "purpose",
                    PlainBand.Purpose.values(),
                    PlainBand::purpose,
                    (part, purpose) -> new PlainBand(part.tag(), part.use(), purpose, part.amount(), part.firstShed()));
            band.oneOrNone(
                    "block.shed",
                    "shed",
                    "choice.in-turn",
                    Shed.values(),
                    PlainBand::firstShed,
                    (part, shed) -> new PlainBand(part.tag(), part.use(), part.purpose(), part.amount(), shed));
        } else if (block instanceof SpreadHeader) {
            header();
        } else if (block instanceof OrderingCord) {
            section(OrderingCord.class)
                    .oneOrNone(
                            "block.shed",
                            "shed",
                            "choice.in-turn",
                            Shed.values(),
                            OrderingCord::firstShed,
                            (part, shed) -> new OrderingCord(part.tag(), part.use(), part.picks(), shed));
        } else if (block instanceof Twining) {
            twining();
        } else if (block instanceof Soumak) {
            soumak();
        } else if (block instanceof HalfHitch) {
            section(HalfHitch.class)
                    .measure(
                            "block.group",
                            part -> String.valueOf(part.endsPerGroup()),
                            (part, typed) -> new HalfHitch(part.tag(), part.use(), part.rows(), typing.whole(typed)));
        } else if (block instanceof HemFold) {
            fold();
        } else if (block instanceof WarpFinish) {
            finish();
        } else if (block instanceof KnotRows) {
            knots();
        } else if (block instanceof TurnedEnds) {
            turned();
        } else if (block instanceof WrappedTassels) {
            tassels();
        } else if (block instanceof WarpLoops) {
            loops();
        }
    }

    private void twining() {
        FieldPanel.Section<Twining> twining = section(Twining.class);
        twining.measure(
                "block.group",
                part -> String.valueOf(part.endsPerGroup()),
                (part, typed) -> new Twining(
                        part.tag(), part.use(), part.rows(), typing.whole(typed), part.first(), part.countered()));
        twining.oneOf(
                "block.twist",
                "twist",
                Lean.values(),
                Twining::first,
                (part, lean) ->
                        new Twining(part.tag(), part.use(), part.rows(), part.endsPerGroup(), lean, part.countered()));
        twining.flag(
                "block.countered",
                Twining::countered,
                (part, countered) ->
                        new Twining(part.tag(), part.use(), part.rows(), part.endsPerGroup(), part.first(), countered));
    }

    private void soumak() {
        FieldPanel.Section<Soumak> soumak = section(Soumak.class);
        soumak.measure(
                "block.over",
                part -> String.valueOf(part.over()),
                (part, typed) -> new Soumak(
                        part.tag(),
                        part.use(),
                        part.rows(),
                        typing.whole(typed),
                        part.under(),
                        part.first(),
                        part.countered()));
        soumak.measure(
                "block.under",
                part -> String.valueOf(part.under()),
                (part, typed) -> new Soumak(
                        part.tag(),
                        part.use(),
                        part.rows(),
                        part.over(),
                        typing.whole(typed),
                        part.first(),
                        part.countered()));
        soumak.oneOf(
                "block.slant",
                "twist",
                Lean.values(),
                Soumak::first,
                (part, lean) -> new Soumak(
                        part.tag(), part.use(), part.rows(), part.over(), part.under(), lean, part.countered()));
        soumak.flag(
                "block.countered",
                Soumak::countered,
                (part, countered) -> new Soumak(
                        part.tag(), part.use(), part.rows(), part.over(), part.under(), part.first(), countered));
    }

    private void fold() {
        FieldPanel.Section<HemFold> fold = section(HemFold.class);
        turning(fold);
        fold.oneOrNone(
                "block.support",
                "support",
                "choice.nothing",
                Support.Kind.values(),
                part -> part.support().map(Support::kind),
                (part, kind) -> part.withSupport(kind.map(wanted -> support(part, wanted))));
        fold.measure(
                "block.support-size",
                part -> part.support().map(Support::size).map(Object::toString).orElse(""),
                (part, typed) -> part.withSupport(
                        Typing.lengthOrNone(typed, desk.session().piece()).map(size -> sized(part, size))));
        fold.measure(
                "block.slat-thickness",
                part -> part.support()
                        .filter(Support.Slat.class::isInstance)
                        .map(slat -> ((Support.Slat) slat).thickness().toString())
                        .orElse(""),
                (part, typed) -> part.withSupport(thickened(
                        part, Typing.lengthOrNone(typed, desk.session().piece()))));
        panel.prose(() -> Advising.fold(desk.session().plan(), place));
    }

    private void turning(FieldPanel.Section<HemFold> fold) {
        fold.oneOf(
                "block.turning",
                "turning",
                Turning.Kind.values(),
                part -> part.turning().kind(),
                (part, kind) -> part.withTurning(turned(part, kind)));
        fold.measure(
                "block.first-turn",
                part -> part.firstTurn().map(Object::toString).orElse(""),
                (part, typed) -> part.withTurning(
                        Typing.lengthOrNone(typed, desk.session().piece())
                                .<Turning>map(Turning.Twice::new)
                                .orElseGet(() -> part.firstTurn().isPresent() ? new Turning.Once() : part.turning())));
        fold.measure(
                "block.band-width",
                part -> part.band().map(band -> band.width().toString()).orElse(""),
                (part, typed) -> part.withTurning(
                        Typing.lengthOrNone(typed, desk.session().piece())
                                .<Turning>map(width -> new Turning.Faced(width, thickness(part)))
                                .orElseGet(() -> part.band().isPresent() ? new Turning.Once() : part.turning())));
        fold.measure(
                "block.band-thickness",
                part -> thickness(part).map(Object::toString).orElse(""),
                (part, typed) -> part.withTurning(
                        banded(part, Typing.lengthOrNone(typed, desk.session().piece()))));
    }

    private static Optional<Length> thickness(HemFold fold) {
        return fold.band().flatMap(Turning.Faced::thickness);
    }

    /** Of another kind; what it needs beside is of a usual size. */
    private Turning turned(HemFold fold, Turning.Kind kind) {
        if (kind == fold.turning().kind()) {
            return fold.turning();
        }
        boolean inches = desk.session().piece().habits().units() == UnitSystem.INCHES;
        return switch (kind) {
            case ONCE -> new Turning.Once();
            case TWICE -> new Turning.Twice(Length.parse(inches ? "1/4 in" : "5 mm"));
            case MITRED -> new Turning.Mitred();
            case FACED -> new Turning.Faced(Length.parse(inches ? "1 in" : "25 mm"), Optional.empty());
        };
    }

    private static Turning banded(HemFold fold, Optional<Length> thickness) {
        if (thickness.isPresent() && fold.band().isEmpty()) {
            throw new BadMeasure("hem.band-first", Map.of());
        }
        return fold.band()
                .<Turning>map(band -> new Turning.Faced(band.width(), thickness))
                .orElse(fold.turning());
    }

    /** Of another kind, as wide as it was; for a hem that took nothing, of a usual size. */
    private Support support(HemFold fold, Support.Kind kind) {
        boolean inches = desk.session().piece().habits().units() == UnitSystem.INCHES;
        Optional<Length> size = fold.support().map(Support::size);
        Length slat = Length.parse(inches ? "3/16 in" : "5 mm");
        return switch (kind) {
            case BAR -> new Support.RoundBar(size.orElse(Length.parse(inches ? "1/2 in" : "12 mm")));
            case SLAT -> new Support.Slat(size.orElse(Length.parse(inches ? "1 in" : "25 mm")), slat);
            case STRIP -> new Support.Strip(size.orElse(Length.parse(inches ? "3/4 in" : "20 mm")));
        };
    }

    private static Support sized(HemFold fold, Length size) {
        Support now = fold.support().orElse(new Support.RoundBar(size));
        if (now instanceof Support.Slat slat) {
            return new Support.Slat(size, slat.thickness());
        }
        return now instanceof Support.Strip ? new Support.Strip(size) : new Support.RoundBar(size);
    }

    /** Only a slat has a thickness of its own: what gets one becomes a slat, and a slat that loses it a bar. */
    private static Optional<Support> thickened(HemFold fold, Optional<Length> thickness) {
        if (thickness.isPresent()) {
            Length width =
                    fold.support().map(Support::size).orElseThrow(() -> new BadMeasure("hem.slat-first", Map.of()));
            return Optional.of(new Support.Slat(width, thickness.get()));
        }
        return fold.support().map(now -> now instanceof Support.Slat ? new Support.RoundBar(now.size()) : now);
    }

    private void finish() {
        FieldPanel.Section<WarpFinish> finish = section(WarpFinish.class);
        finish.oneOf(
                "block.finish",
                "finish",
                WarpFinish.Kind.values(),
                WarpFinish::kind,
                (part, kind) -> new WarpFinish(part.tag(), kind, part.endsPerGroup(), part.hanging()));
        finish.measure(
                "block.group",
                part -> String.valueOf(part.endsPerGroup()),
                (part, typed) -> new WarpFinish(part.tag(), part.kind(), typing.whole(typed), part.hanging()));
    }

    private void knots() {
        FieldPanel.Section<KnotRows> knots = section(KnotRows.class);
        knots.measure(
                "block.knot-rows",
                part -> String.valueOf(part.rows()),
                (part, typed) -> part.withRows(typing.whole(typed)));
        knots.measure(
                "block.group",
                part -> String.valueOf(part.endsPerGroup()),
                (part, typed) -> new KnotRows(
                        part.tag(), part.rows(), typing.whole(typed), part.split(), part.apart(), part.hanging()));
        knots.flag(
                "block.split",
                KnotRows::split,
                (part, split) -> new KnotRows(
                        part.tag(), part.rows(), part.endsPerGroup(), split, part.apart(), part.hanging()));
        knots.measure(
                "block.apart",
                part -> part.apart().map(Object::toString).orElse(""),
                (part, typed) -> new KnotRows(
                        part.tag(),
                        part.rows(),
                        part.endsPerGroup(),
                        part.split(),
                        Typing.lengthOrNone(typed, desk.session().piece()),
                        part.hanging()));
    }

    private void turned() {
        FieldPanel.Section<TurnedEnds> turned = section(TurnedEnds.class);
        turned.measure(
                "block.turned-over",
                part -> String.valueOf(part.over()),
                (part, typed) ->
                        new TurnedEnds(part.tag(), typing.whole(typed), part.bothWays(), part.from(), part.back()));
        turned.flag(
                "block.both-ways",
                TurnedEnds::bothWays,
                (part, both) -> new TurnedEnds(part.tag(), part.over(), both, part.from(), part.back()));
        turned.oneOf(
                "block.from",
                "side",
                Side.values(),
                TurnedEnds::from,
                (part, side) -> new TurnedEnds(part.tag(), part.over(), part.bothWays(), side, part.back()));
    }

    private void tassels() {
        FieldPanel.Section<WrappedTassels> tassels = section(WrappedTassels.class);
        tassels.measure(
                "block.turns",
                part -> String.valueOf(part.turns()),
                (part, typed) -> part.withTurns(typing.whole(typed)));
        tassels.measure(
                "block.group",
                part -> String.valueOf(part.endsPerGroup()),
                (part, typed) ->
                        new WrappedTassels(part.tag(), part.use(), typing.whole(typed), part.turns(), part.hanging()));
        material(tassels);
    }

    private void loops() {
        FieldPanel.Section<WarpLoops> loops = section(WarpLoops.class);
        loops.oneOf(
                "block.round",
                "held",
                WarpLoops.Held.values(),
                WarpLoops::round,
                (part, round) -> new WarpLoops(part.tag(), round, part.thick()));
        loops.measure(
                "block.round-thick",
                part -> part.thick().text(),
                (part, typed) -> new WarpLoops(
                        part.tag(),
                        part.round(),
                        Typing.length(typed, desk.session().piece())));
    }

    private void header() {
        FieldPanel.Section<SpreadHeader> header = section(SpreadHeader.class);
        header.measure(
                "block.strands",
                part -> String.valueOf(part.strands()),
                (part, typed) ->
                        new SpreadHeader(part.tag(), part.use(), part.picks(), typing.whole(typed), part.firstShed()));
        header.oneOrNone(
                "block.shed",
                "shed",
                "choice.in-turn",
                Shed.values(),
                SpreadHeader::firstShed,
                (part, shed) -> new SpreadHeader(part.tag(), part.use(), part.picks(), part.strands(), shed));
    }

    private <B extends TakesYarn> void material(FieldPanel.Section<B> section) {
        section.choice(
                "block.yarn",
                this::materials,
                part -> part.use().material(),
                (part, material) -> withMaterial(part, material));
    }

    @SuppressWarnings("unchecked")
    private static <B extends TakesYarn> B withMaterial(B part, Material material) {
        return (B) part.withUse(part.use().with(material));
    }

    /** @param spreads a spread header, which always comes out again */
    private void yarn(boolean spreads) {
        FieldPanel.Section<YarnBlock> yarn = section(YarnBlock.class);
        material(yarn);
        yarn.oneOrNone(
                "block.from",
                "side",
                "choice.in-turn",
                Side.values(),
                part -> part.use().from(),
                (part, side) ->
                        part.withUse(new Use(part.use().material(), part.use().comesOut(), side)));
        if (!spreads) {
            yarn.flag(
                    "block.comes-out",
                    part -> part.use().comesOut(),
                    (part, out) -> part.withUse(
                            new Use(part.use().material(), out, part.use().from())));
        }
    }

    /** The parts that yarns play, then every yarn by itself. */
    private List<Choice<Material>> materials() {
        Piece piece = desk.session().shown();
        List<Choice<Material>> all = new ArrayList<>();
        for (MaterialRole role : MaterialRole.values()) {
            Material part = new Material.Part(role);
            String text = desk.texts()
                    .say(
                            "material." + key(role),
                            Map.of("yarn", piece.yarnOf(part, place).name()));
            all.add(new Choice<>(
                    part, text, new Swatch(piece.yarnOf(part, place).colour())));
        }
        piece.yarns()
                .forEach(
                        own -> all.add(new Choice<>(new Material.Own(own.id()), own.name(), new Swatch(own.colour()))));
        return all;
    }

    private String key(MaterialRole role) {
        return switch (role) {
            case WARP_CORD -> "cord";
            case WASTE -> "waste";
            case WEFT -> place == Place.START ? "weft.start" : "weft.top";
        };
    }

    private void repeatAtTop() {
        JCheckBox box = new JCheckBox(desk.texts().say("field.block.repeat"));
        box.setName("field.block.repeat");
        box.setToolTipText(desk.texts().say("field.block.repeat.tip"));
        box.addActionListener(event ->
                desk.session().edit(desk.edits().leaveOut(desk.session().piece(), id, !box.isSelected())));
        Field follow = () -> box.setSelected(desk.session().shown().top() instanceof Top.FollowsStart top
                && !top.leftOut().contains(id));
        follow.refresh();
        panel.add(box, "span 2");
        panel.follow(follow);
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
                                        "block",
                                        desk.texts().words().name(block),
                                        "number",
                                        blocks.indexOf(block) + 1,
                                        "count",
                                        blocks.size())))
                .orElse("");
    }

    /** A block of a top that follows the start can't be changed there. */
    private void following() {
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
        out.addActionListener(event ->
                desk.session().edit(desk.edits().leaveOut(desk.session().piece(), id, true)));
        JButton own = new JButton(desk.texts().say("field.top.own"));
        own.setName("topOnItsOwn");
        own.addActionListener(event -> desk.session().edit(desk.edits().topOnItsOwn()));
        panel.wide(there);
        panel.wide(out);
        panel.wide(own);
        panel.heading("heading.comes-to");
        panel.prose(() -> BlockFacts.of(desk.session().plan(), place, id, desk.texts()));
    }
}

package thrumwright.store;

import java.util.Optional;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Sheds;
import thrumwright.piece.Warp;

/** How a loom, its warp and the weaver's habits stand in a file. */
final class LoomFormats {
    static final Format<Loom.Uprights> POSTS = posts();
    static final Format<Loom> LOOM = loom();
    static final Format<Warp> WARP = warp();
    static final Format<Habits> HABITS = habits();

    private LoomFormats() {}

    private static Format<Loom.Uprights> posts() {
        var posts = new Declared<Loom.Uprights>();
        var diameter = posts.needed("diameter", Types.LENGTH, Loom.Uprights::diameter);
        var gap = posts.needed("gap", Types.LENGTH, Loom.Uprights::gap);
        return posts.as(in -> new Loom.Uprights(diameter.of(in), gap.of(in)));
    }

    private static Format<Loom> loom() {
        var loom = new Declared<Loom>();
        var name = loom.usual("name", Types.text("like.loom"), "", Loom::name);
        var open = loom.needed("open", Types.LENGTH, Loom::open);
        var posts = loom.optional("posts", POSTS, Loom::uprights);
        var clearance = loom.optional("clearance", Types.LENGTH, Loom::clearance);
        var workingRoom = loom.optional("workingRoom", Types.LENGTH, Loom::workingRoom);
        var warpPerEnd = loom.optional("warpPerEnd", Types.LENGTH, Loom::warpPerEnd);
        var sheds = loom.spare("sheds", Choices.SHEDS, Sheds.FINGERS, Loom::sheds);
        var kind = loom.together(LoomKindFormats.KIND, LoomFormats::kind);
        return loom.as(in -> new Loom(
                name.of(in),
                kind.of(in).orElseGet(LoomKind.BarToBar::new),
                open.of(in),
                posts.of(in),
                clearance.of(in),
                workingRoom.of(in),
                warpPerEnd.of(in),
                sheds.of(in)));
    }

    /** The usual kind isn't written. */
    private static Optional<LoomKind> kind(Loom loom) {
        return Optional.of(loom.kind()).filter(kind -> !(kind instanceof LoomKind.BarToBar));
    }

    private static Format<Warp> warp() {
        var warp = new Declared<Warp>();
        var width = warp.needed("width", Types.LENGTH, Warp::width);
        var sett = warp.needed("sett", Types.SETT, Warp::sett);
        var yarn = warp.needed("yarn", Types.YARN, Warp::yarnId);
        var woven = warp.optional("woven", Types.LENGTH, Warp::woven);
        return warp.as(in -> new Warp(width.of(in), sett.of(in), yarn.of(in), woven.of(in)));
    }

    /** What is left out is as usual with those units. */
    private static Format<Habits> habits() {
        var habits = new Declared<Habits>();
        var units = habits.usual("units", Choices.UNITS, UnitSystem.METRIC, Habits::units);
        var widthsOf = habits.optional("widthsOf", Choices.WIDTHS_OF, value -> Optional.of(value.widthsOf()));
        var step = habits.optional("step", Types.LENGTH, value -> Optional.of(value.step()));
        var tail = habits.optional("tail", Types.LENGTH, value -> Optional.of(value.tail()));
        var tie = habits.optional("tie", Types.LENGTH, value -> Optional.of(value.tie()));
        var ease = habits.optional("ease", Types.number(0, 1), value -> Optional.of(value.ease()));
        var butterfly = habits.optional("butterfly", Types.LENGTH, value -> Optional.of(value.handful()));
        var overlap = habits.optional("overlap", Types.LENGTH, value -> Optional.of(value.overlap()));
        return habits.as(in -> {
            Habits usual = Habits.usual(units.of(in));
            return new Habits(
                    usual.units(),
                    widthsOf.of(in).orElse(usual.widthsOf()),
                    step.of(in).orElse(usual.step()),
                    tail.of(in).orElse(usual.tail()),
                    tie.of(in).orElse(usual.tie()),
                    ease.of(in).orElse(usual.ease()),
                    butterfly.of(in).orElse(usual.handful()),
                    overlap.of(in).orElse(usual.overlap()));
        });
    }
}

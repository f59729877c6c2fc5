package thrumwright.store;

import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.LoomKind;
import thrumwright.piece.Sheds;
import thrumwright.piece.Warp;

/** How a loom, its warp and the weaver's habits stand in a file. */
final class LoomFormats {
    static final Format<Loom.Uprights> POSTS = new Declared<>() {
        private final Entry<Length> diameter = needed("diameter", Types.LENGTH);
        private final Entry<Length> gap = needed("gap", Types.LENGTH);

        @Override
        public Loom.Uprights make(Fields in) throws FileProblem {
            return new Loom.Uprights(diameter.of(in), gap.of(in));
        }

        @Override
        public void write(Loom.Uprights posts, Writing out) {
            out.put(diameter, posts.diameter()).put(gap, posts.gap());
        }
    };

    static final Format<Loom> LOOM = new Looms();

    static final Format<Warp> WARP = new Declared<>() {
        private final Entry<Length> width = needed("width", Types.LENGTH);
        private final Entry<Sett> sett = needed("sett", Types.SETT);
        private final Entry<String> yarn = needed("yarn", Types.YARN);
        private final Entry<Optional<Length>> woven = optional("woven", Types.LENGTH);

        @Override
        public Warp make(Fields in) throws FileProblem {
            return new Warp(width.of(in), sett.of(in), yarn.of(in), woven.of(in));
        }

        @Override
        public void write(Warp warp, Writing out) {
            out.put(width, warp.width()).put(sett, warp.sett());
            out.put(yarn, warp.yarnId()).put(woven, warp.woven());
        }
    };

    static final Format<Habits> HABITS = new OfHabits();

    private LoomFormats() {}

    private static final class Looms extends Declared<Loom> {
        private final Entry<String> name = usual("name", Types.text("like.loom"), "");
        private final Entry<Length> open = needed("open", Types.LENGTH);
        private final Entry<Optional<Loom.Uprights>> posts = optional("posts", POSTS);
        private final Entry<Optional<Length>> clearance = optional("clearance", Types.LENGTH);
        private final Entry<Optional<Length>> workingRoom = optional("workingRoom", Types.LENGTH);
        private final Entry<Optional<Length>> warpPerEnd = optional("warpPerEnd", Types.LENGTH);
        private final Entry<Sheds> sheds = spare("sheds", Choices.SHEDS, Sheds.FINGERS);
        private final Entry<Optional<LoomKind>> kind = together(LoomKindFormats.KIND);

        @Override
        public Loom make(Fields in) throws FileProblem {
            return new Loom(
                    name.of(in),
                    kind.of(in).orElse(new LoomKind.BarToBar()),
                    open.of(in),
                    posts.of(in),
                    clearance.of(in),
                    workingRoom.of(in),
                    warpPerEnd.of(in),
                    sheds.of(in));
        }

        @Override
        public void write(Loom loom, Writing out) {
            out.put(name, loom.name()).put(open, loom.open()).put(posts, loom.uprights());
            out.put(clearance, loom.clearance()).put(workingRoom, loom.workingRoom());
            out.put(warpPerEnd, loom.warpPerEnd()).put(sheds, loom.sheds()).put(kind, kind(loom));
        }

        /** The usual kind isn't written. */
        private static Optional<LoomKind> kind(Loom loom) {
            return loom.kind() instanceof LoomKind.BarToBar ? Optional.empty() : Optional.of(loom.kind());
        }
    }

    /** What is left out is as usual with those units. */
    private static final class OfHabits extends Declared<Habits> {
        private final Entry<UnitSystem> units = usual("units", Choices.UNITS, UnitSystem.METRIC);
        private final Entry<Optional<Habits.WidthsOf>> widthsOf = optional("widthsOf", Choices.WIDTHS_OF);
        private final Entry<Optional<Length>> step = optional("step", Types.LENGTH);
        private final Entry<Optional<Length>> tail = optional("tail", Types.LENGTH);
        private final Entry<Optional<Length>> tie = optional("tie", Types.LENGTH);
        private final Entry<Optional<Double>> ease = optional("ease", Types.number(0, 1));
        private final Entry<Optional<Length>> butterfly = optional("butterfly", Types.LENGTH);
        private final Entry<Optional<Length>> overlap = optional("overlap", Types.LENGTH);

        @Override
        public Habits make(Fields in) throws FileProblem {
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
        }

        @Override
        public void write(Habits habits, Writing out) {
            out.put(units, habits.units()).put(widthsOf, Optional.of(habits.widthsOf()));
            out.put(step, Optional.of(habits.step())).put(tail, Optional.of(habits.tail()));
            out.put(tie, Optional.of(habits.tie())).put(ease, Optional.of(habits.ease()));
            out.put(butterfly, Optional.of(habits.handful())).put(overlap, Optional.of(habits.overlap()));
        }
    }
}

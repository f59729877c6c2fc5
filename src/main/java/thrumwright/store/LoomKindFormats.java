package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.measure.Sett;
import thrumwright.piece.LoomKind;

/** How the kinds of loom stand in a file: an object under the kind's own name; a loom from bar to bar needs none. */
final class LoomKindFormats {
    private static final Format<LoomKind.RoundFrame> ROUND_FRAME = new Declared<>() {
        private final Entry<LoomKind.Spacer> spacer = needed("spacer", Choices.SPACER);

        @Override
        public LoomKind.RoundFrame make(Fields in) throws FileProblem {
            return new LoomKind.RoundFrame(spacer.of(in));
        }

        @Override
        public void write(LoomKind.RoundFrame round, Writing out) {
            out.put(spacer, round.spacer());
        }
    };

    private static final Format<LoomKind.JoiningBar> JOINING_BAR = new Declared<>() {
        private final Entry<Length> above = needed("above", Types.LENGTH);

        @Override
        public LoomKind.JoiningBar make(Fields in) throws FileProblem {
            return new LoomKind.JoiningBar(above.of(in));
        }

        @Override
        public void write(LoomKind.JoiningBar joining, Writing out) {
            out.put(above, joining.above());
        }
    };

    private static final Format<LoomKind.Pegged> PEGGED = new Declared<>() {
        private final Entry<Sett> pitch = needed("pitch", Types.SETT);
        private final Entry<LoomKind.Peg> peg = needed("of", Choices.PEG);

        @Override
        public LoomKind.Pegged make(Fields in) throws FileProblem {
            return new LoomKind.Pegged(pitch.of(in), peg.of(in));
        }

        @Override
        public void write(LoomKind.Pegged pegged, Writing out) {
            out.put(pitch, pegged.pitch()).put(peg, pegged.peg());
        }
    };

    private static final Format<LoomKind.Rollers> ROLLERS = new Declared<>() {
        private final Entry<Length> waste = needed("waste", Types.LENGTH);

        @Override
        public LoomKind.Rollers make(Fields in) throws FileProblem {
            return new LoomKind.Rollers(waste.of(in));
        }

        @Override
        public void write(LoomKind.Rollers rollers, Writing out) {
            out.put(waste, rollers.waste());
        }
    };

    static final Format<Optional<LoomKind>> KIND = new OneOf<LoomKind>(
                    new Phrase("file.loom-kind"),
                    List.of(
                            named("roundFrame", LoomKind.RoundFrame.class, ROUND_FRAME),
                            named("joiningBar", LoomKind.JoiningBar.class, JOINING_BAR),
                            named("fixedPitch", LoomKind.Pegged.class, PEGGED),
                            named("rollers", LoomKind.Rollers.class, ROLLERS)))
            .orNone();

    private LoomKindFormats() {}

    private static <S extends LoomKind> OneOf.Branch<LoomKind, S> named(String name, Class<S> sort, Format<S> inside) {
        return OneOf.Branch.of(name, sort, new Within<>(name, inside));
    }
}

package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Length;
import thrumwright.piece.Design;
import thrumwright.piece.Portion;
import thrumwright.piece.Stripes;

/** How a design stands in a file. */
final class DesignFormats {
    private static final ValueType<Portion> PORTION = new Single.Parsed<>("like.portion") {
        @Override
        Portion parsed(String text) {
            return Portion.parse(text);
        }

        @Override
        String text(Portion portion) {
            return portion.text();
        }
    };

    private static final Format<Stripes.Stripe> OTHER = new Declared<>() {
        private final Entry<String> yarn = needed("yarn", Types.YARN);
        private final Entry<Portion> part = needed("part", PORTION);

        @Override
        public Stripes.Stripe make(Fields in) throws FileProblem {
            return new Stripes.Stripe(yarn.of(in), part.of(in));
        }

        @Override
        public void write(Stripes.Stripe stripe, Writing out) {
            out.put(yarn, stripe.yarnId()).put(part, stripe.part());
        }
    };

    private static final Format<LastPick> LAST_PICK = new Declared<>() {
        private final Entry<Optional<Shed>> shed = optional("shed", Choices.SHED);
        private final Entry<Optional<Side>> side = optional("side", Choices.SIDE);

        @Override
        public LastPick make(Fields in) throws FileProblem {
            return new LastPick(shed.of(in), side.of(in));
        }

        @Override
        public void write(LastPick pick, Writing out) {
            out.put(shed, pick.shed()).put(side, pick.side());
        }
    };

    static final Format<Design> DESIGN = new Designs();

    private DesignFormats() {}

    private record LastPick(Optional<Shed> shed, Optional<Side> side) {
        static final LastPick UNKNOWN = new LastPick(Optional.empty(), Optional.empty());
    }

    private static final class Designs extends Declared<Design> {
        private final Entry<Length> height = needed("height", Types.LENGTH);
        private final Entry<String> first = needed("firstStripe", Types.YARN);
        private final Entry<String> last = needed("lastStripe", Types.YARN);
        private final Entry<LastPick> lastPick = spare("lastPick", LAST_PICK, LastPick.UNKNOWN);
        private final Entry<Double> relaxing = spare("relaxing", Types.number(0, 0.5), 0.0);
        private final Entry<Optional<Portion>> part = optional("firstPart", PORTION);
        private final Entry<List<Stripes.Stripe>> others =
                spare("others", new Listed<>(OTHER, "other", Stripes.MOST), List.of());

        @Override
        public Design make(Fields in) throws FileProblem {
            LastPick pick = lastPick.of(in);
            Stripes stripes = new Stripes(part.of(in), others.of(in));
            return new Design(
                    height.of(in), first.of(in), last.of(in), pick.shed(), pick.side(), relaxing.of(in), stripes);
        }

        @Override
        public void write(Design design, Writing out) {
            out.put(height, design.height()).put(first, design.firstYarnId()).put(last, design.lastYarnId());
            out.put(lastPick, new LastPick(design.lastShed(), design.lastSide()));
            out.put(relaxing, design.relaxing()).put(part, design.stripes().first());
            out.put(others, design.stripes().others());
        }
    }
}

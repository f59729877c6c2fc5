package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.HalfHitch;
import thrumwright.block.Hemstitching;
import thrumwright.block.Lean;
import thrumwright.block.OrderingCord;
import thrumwright.block.PlainBand;
import thrumwright.block.Shed;
import thrumwright.block.SlitBand;
import thrumwright.block.Soumak;
import thrumwright.block.SpreadHeader;
import thrumwright.block.Twining;
import thrumwright.block.Use;

/** How blocks of rows stand in a file. */
final class RowFormats {
    private static final Choices<Hemstitching.Round> ROUND = new Choices<Hemstitching.Round>()
            .with("first picks", Hemstitching.Round.FIRST)
            .with("last picks", Hemstitching.Round.LAST);

    private static final BlockKind<OrderingCord> ORDERING_CORD = new BlockKind<>("ordering cord", OrderingCord.class) {
        private final Entry<Integer> picks = usual("picks", BlockParts.ROWS, 1);
        private final Entry<Use> use = together(BlockParts.USE);
        private final Entry<Optional<Shed>> first = optional("first", Choices.SHED);

        @Override
        public OrderingCord make(Fields in) throws FileProblem {
            return new OrderingCord(tag.of(in), use.of(in), picks.of(in), first.of(in));
        }

        @Override
        void writeOwn(OrderingCord cord, Writing out) {
            out.put(picks, cord.picks()).put(use, cord.use()).put(first, cord.firstShed());
        }
    };

    private static final BlockKind<PlainBand> PLAIN_BAND = new BlockKind<>("plain band", PlainBand.class) {
        private final Entry<PlainBand.Purpose> purpose = usual("for", Choices.PURPOSE, PlainBand.Purpose.PLAIN);
        private final Entry<Amount> amount = together(BlockParts.AMOUNT);
        private final Entry<Use> use = together(BlockParts.USE);
        private final Entry<Optional<Shed>> first = optional("first", Choices.SHED);

        @Override
        public PlainBand make(Fields in) throws FileProblem {
            return new PlainBand(tag.of(in), use.of(in), purpose.of(in), amount.of(in), first.of(in));
        }

        @Override
        void writeOwn(PlainBand band, Writing out) {
            out.put(purpose, band.purpose()).put(amount, band.amount()).put(use, band.use());
            out.put(first, band.firstShed());
        }
    };

    private static final BlockKind<SlitBand> SLIT_BAND = new BlockKind<>("slit band", SlitBand.class) {
        private final Entry<Integer> part = usual("part", Types.whole(SlitBand.LEAST, SlitBand.MOST), 30);
        private final Entry<Amount> amount = together(BlockParts.AMOUNT);
        private final Entry<Use> use = together(BlockParts.USE);
        private final Entry<Optional<Shed>> first = optional("first", Choices.SHED);

        @Override
        public SlitBand make(Fields in) throws FileProblem {
            return new SlitBand(tag.of(in), use.of(in), part.of(in), amount.of(in), first.of(in));
        }

        @Override
        void writeOwn(SlitBand band, Writing out) {
            out.put(part, band.endsPerPart()).put(amount, band.amount()).put(use, band.use());
            out.put(first, band.firstShed());
        }
    };

    private static final BlockKind<SpreadHeader> SPREAD_HEADER = new BlockKind<>("spread header", SpreadHeader.class) {
        private final Entry<Integer> picks = usual("picks", BlockParts.ROWS, 1);
        private final Entry<Integer> strands = usual("strands", Types.whole(1, SpreadHeader.MOST_STRANDS), 1);
        private final Entry<Use> use = together(BlockParts.USE);
        private final Entry<Optional<Shed>> first = optional("first", Choices.SHED);

        @Override
        public SpreadHeader make(Fields in) throws FileProblem {
            return new SpreadHeader(tag.of(in), use.of(in), picks.of(in), strands.of(in), first.of(in));
        }

        @Override
        void writeOwn(SpreadHeader header, Writing out) {
            out.put(picks, header.picks()).put(strands, header.strands()).put(use, header.use());
            out.put(first, header.firstShed());
        }
    };

    private static final BlockKind<Twining> TWINING = new BlockKind<>("twining", Twining.class) {
        private final Entry<Integer> rows = usual("rows", BlockParts.ROWS, 1);
        private final Entry<Integer> group = usual("group", BlockParts.GROUP, 1);
        private final Entry<Lean> twist = usual("twist", Choices.LEAN, Lean.Z);
        private final Entry<Boolean> countered = spare("countered", Types.FLAG, false);
        private final Entry<Use> use = together(BlockParts.USE);

        @Override
        public Twining make(Fields in) throws FileProblem {
            return new Twining(tag.of(in), use.of(in), rows.of(in), group.of(in), twist.of(in), countered.of(in));
        }

        @Override
        void writeOwn(Twining twining, Writing out) {
            out.put(rows, twining.rows()).put(group, twining.endsPerGroup()).put(twist, twining.first());
            out.put(countered, twining.countered()).put(use, twining.use());
        }
    };

    private static final BlockKind<Soumak> SOUMAK = new BlockKind<>("soumak", Soumak.class) {
        private final Entry<Integer> rows = usual("rows", BlockParts.ROWS, 1);
        private final Entry<Integer> over = usual("over", BlockParts.SEVERAL, 2);
        private final Entry<Integer> under = usual("under", Types.whole(1, 23), 1);
        private final Entry<Lean> slant = usual("slant", Choices.LEAN, Lean.Z);
        private final Entry<Boolean> countered = spare("countered", Types.FLAG, false);
        private final Entry<Use> use = together(BlockParts.USE);

        @Override
        public Soumak make(Fields in) throws FileProblem {
            return new Soumak(
                    tag.of(in), use.of(in), rows.of(in), over.of(in), under.of(in), slant.of(in), countered.of(in));
        }

        @Override
        void writeOwn(Soumak soumak, Writing out) {
            out.put(rows, soumak.rows()).put(over, soumak.over()).put(under, soumak.under());
            out.put(slant, soumak.first()).put(countered, soumak.countered()).put(use, soumak.use());
        }
    };

    private static final BlockKind<HalfHitch> HALF_HITCHES = new BlockKind<>("half hitches", HalfHitch.class) {
        private final Entry<Integer> rows = usual("rows", BlockParts.ROWS, 1);
        private final Entry<Integer> group = usual("group", BlockParts.GROUP, 1);
        private final Entry<Use> use = together(BlockParts.USE);

        @Override
        public HalfHitch make(Fields in) throws FileProblem {
            return new HalfHitch(tag.of(in), use.of(in), rows.of(in), group.of(in));
        }

        @Override
        void writeOwn(HalfHitch hitches, Writing out) {
            out.put(rows, hitches.rows()).put(group, hitches.endsPerGroup()).put(use, hitches.use());
        }
    };

    private static final BlockKind<Hemstitching> HEMSTITCHING = new BlockKind<>("hemstitching", Hemstitching.class) {
        private final Entry<Integer> group = usual("group", BlockParts.GROUP, 4);
        private final Entry<Integer> picks = usual("picks", Types.whole(1, Hemstitching.MOST_PICKS), 2);
        private final Entry<Hemstitching.Round> round = usual("round", ROUND, Hemstitching.Round.FIRST);
        private final Entry<Use> use = together(BlockParts.USE);

        @Override
        public Hemstitching make(Fields in) throws FileProblem {
            return new Hemstitching(tag.of(in), use.of(in), group.of(in), picks.of(in), round.of(in));
        }

        @Override
        void writeOwn(Hemstitching stitching, Writing out) {
            out.put(group, stitching.endsPerGroup())
                    .put(picks, stitching.picks())
                    .put(round, stitching.round());
            out.put(use, stitching.use());
        }
    };

    /** In the order in which they are listed. */
    static final List<BlockKind<?>> KINDS =
            List.of(ORDERING_CORD, PLAIN_BAND, SLIT_BAND, SPREAD_HEADER, TWINING, SOUMAK, HALF_HITCHES, HEMSTITCHING);

    private RowFormats() {}
}

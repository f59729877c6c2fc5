package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.block.HemFold;
import thrumwright.block.KnotRows;
import thrumwright.block.Material;
import thrumwright.block.OpenWarp;
import thrumwright.block.Side;
import thrumwright.block.Support;
import thrumwright.block.TurnedEnds;
import thrumwright.block.Turning;
import thrumwright.block.Use;
import thrumwright.block.WarpFinish;
import thrumwright.block.WarpLoops;
import thrumwright.block.WovenEdge;
import thrumwright.block.WrappedTassels;
import thrumwright.measure.Length;

/** How open warp and what becomes of the edges of the cloth and of the warp ends stand in a file. */
final class EdgeFormats {
    private static final BlockKind<HemFold> HEM_FOLD = new BlockKind<>("hem fold", HemFold.class) {
        private final Entry<Turning> turning = together(HemFormats.TURNING);
        private final Entry<Optional<Support>> support = together(HemFormats.SUPPORT);

        @Override
        public HemFold make(Fields in) throws FileProblem {
            return new HemFold(tag.of(in), turning.of(in), support.of(in));
        }

        @Override
        void writeOwn(HemFold fold, Writing out) {
            out.put(turning, fold.turning()).put(support, fold.support());
        }
    };

    private static final BlockKind<OpenWarp> OPEN_WARP = new BlockKind<>("open warp", OpenWarp.class) {
        private final Entry<Length> height = needed("height", Types.LENGTH);

        @Override
        public OpenWarp make(Fields in) throws FileProblem {
            return new OpenWarp(tag.of(in), height.of(in));
        }

        @Override
        void writeOwn(OpenWarp open, Writing out) {
            out.put(height, open.height());
        }
    };

    private static final BlockKind<WarpFinish> WARP_FINISH = new BlockKind<>("warp finish", WarpFinish.class) {
        private final Entry<WarpFinish.Kind> ends = needed("ends", Choices.FINISH);
        private final Entry<Integer> group = usual("group", BlockParts.GROUP, 1);
        private final Entry<Length> hanging = needed("hanging", Types.LENGTH);

        @Override
        public WarpFinish make(Fields in) throws FileProblem {
            return new WarpFinish(tag.of(in), ends.of(in), group.of(in), hanging.of(in));
        }

        @Override
        void writeOwn(WarpFinish finish, Writing out) {
            out.put(ends, finish.kind()).put(group, finish.endsPerGroup()).put(hanging, finish.hanging());
        }
    };

    private static final BlockKind<KnotRows> ROWS_OF_KNOTS = new BlockKind<>("rows of knots", KnotRows.class) {
        private final Entry<Integer> rows = usual("rows", Types.whole(1, KnotRows.MOST_ROWS), 1);
        private final Entry<Integer> group = usual("group", BlockParts.SEVERAL, 2);
        private final Entry<Boolean> split = spare("split", Types.FLAG, false);
        private final Entry<Optional<Length>> apart = optional("apart", Types.LENGTH);
        private final Entry<Length> hanging = needed("hanging", Types.LENGTH);

        @Override
        public KnotRows make(Fields in) throws FileProblem {
            return new KnotRows(tag.of(in), rows.of(in), group.of(in), split.of(in), apart.of(in), hanging.of(in));
        }

        @Override
        void writeOwn(KnotRows knots, Writing out) {
            out.put(rows, knots.rows()).put(group, knots.endsPerGroup()).put(split, knots.split());
            out.put(apart, knots.apart()).put(hanging, knots.hanging());
        }
    };

    private static final BlockKind<TurnedEnds> TURNED_ENDS = new BlockKind<>("turned ends", TurnedEnds.class) {
        private final Entry<Integer> over = usual("over", Types.whole(1, TurnedEnds.MOST_OVER), 1);
        private final Entry<Boolean> bothWays = spare("bothWays", Types.FLAG, false);
        private final Entry<Boolean> fringe = spare("fringe", Types.FLAG, false);
        private final Entry<Side> from = usual("from", Choices.SIDE, Side.LEFT);
        private final Entry<Length> back = needed("hanging", Types.LENGTH);

        @Override
        public TurnedEnds make(Fields in) throws FileProblem {
            return new TurnedEnds(tag.of(in), over.of(in), bothWays.of(in), from.of(in), back.of(in), fringe.of(in));
        }

        @Override
        void writeOwn(TurnedEnds turned, Writing out) {
            out.put(over, turned.over()).put(bothWays, turned.bothWays()).put(fringe, turned.fringe());
            out.put(from, turned.from()).put(back, turned.back());
        }
    };

    private static final BlockKind<WovenEdge> WOVEN_EDGE = new BlockKind<>("woven edge", WovenEdge.class) {
        private final Entry<Integer> through = usual("through", Types.whole(WovenEdge.LEAST, WovenEdge.MOST), 6);
        private final Entry<Side> from = usual("from", Choices.SIDE, Side.LEFT);
        private final Entry<Length> back = needed("hanging", Types.LENGTH);

        @Override
        public WovenEdge make(Fields in) throws FileProblem {
            return new WovenEdge(tag.of(in), through.of(in), from.of(in), back.of(in));
        }

        @Override
        void writeOwn(WovenEdge woven, Writing out) {
            out.put(through, woven.through()).put(from, woven.from()).put(back, woven.back());
        }
    };

    private static final BlockKind<WrappedTassels> WRAPPED_TASSELS =
            new BlockKind<>("wrapped tassels", WrappedTassels.class) {
                private final Entry<Integer> group = usual("group", BlockParts.SEVERAL, 2);
                private final Entry<Integer> turns = needed("turns", Types.whole(1, WrappedTassels.MOST_TURNS));
                private final Entry<Length> hanging = needed("hanging", Types.LENGTH);
                private final Entry<Material> material = together(BlockParts.MATERIAL);

                @Override
                public WrappedTassels make(Fields in) throws FileProblem {
                    return new WrappedTassels(
                            tag.of(in),
                            new Use(material.of(in), false, Optional.empty()),
                            group.of(in),
                            turns.of(in),
                            hanging.of(in));
                }

                @Override
                void writeOwn(WrappedTassels tassels, Writing out) {
                    out.put(group, tassels.endsPerGroup())
                            .put(turns, tassels.turns())
                            .put(hanging, tassels.hanging());
                    out.put(material, tassels.use().material());
                }
            };

    private static final BlockKind<WarpLoops> WARP_LOOPS = new BlockKind<>("warp loops", WarpLoops.class) {
        private final Entry<WarpLoops.Held> round = usual("round", Choices.HELD, WarpLoops.Held.ROD);
        private final Entry<Length> thick = needed("thick", Types.LENGTH);

        @Override
        public WarpLoops make(Fields in) throws FileProblem {
            return new WarpLoops(tag.of(in), round.of(in), thick.of(in));
        }

        @Override
        void writeOwn(WarpLoops loops, Writing out) {
            out.put(round, loops.round()).put(thick, loops.thick());
        }
    };

    /** In the order in which they are listed. */
    static final List<BlockKind<?>> KINDS = List.of(
            HEM_FOLD, OPEN_WARP, WARP_FINISH, ROWS_OF_KNOTS, TURNED_ENDS, WOVEN_EDGE, WRAPPED_TASSELS, WARP_LOOPS);

    private EdgeFormats() {}
}

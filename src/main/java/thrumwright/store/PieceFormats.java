package thrumwright.store;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thrumwright.measure.Phrase;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Design;
import thrumwright.piece.Destiny;
import thrumwright.piece.End;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Meant;
import thrumwright.piece.MeasuredStep;
import thrumwright.piece.Measures;
import thrumwright.piece.Piece;
import thrumwright.piece.Ticks;
import thrumwright.piece.Top;
import thrumwright.piece.Warp;
import thrumwright.yarn.Yarn;

/** How a piece stands in a file. */
final class PieceFormats {
    private static final Format<Materials> MATERIALS = new Declared<>() {
        private final Entry<Optional<String>> cord = optional("cord", Types.YARN);
        private final Entry<Optional<String>> waste = optional("waste", Types.YARN);

        @Override
        public Materials make(Fields in) throws FileProblem {
            return new Materials(cord.of(in), waste.of(in));
        }

        @Override
        public void write(Materials materials, Writing out) {
            out.put(cord, materials.cord()).put(waste, materials.waste());
        }
    };

    private static final Format<Top.FollowsStart> FOLLOWS_START = new Declared<>() {
        private final Entry<String> start = needed("follows", Types.only("start"));
        private final Entry<List<String>> leftOut = spare("leavingOut", Types.TEXTS, List.of());

        @Override
        public Top.FollowsStart make(Fields in) throws FileProblem {
            start.of(in);
            return new Top.FollowsStart(Set.copyOf(leftOut.of(in)));
        }

        @Override
        public void write(Top.FollowsStart top, Writing out) {
            out.put(start, "start").put(leftOut, top.leftOut().stream().sorted().toList());
        }
    };

    private static final Format<Top.OnItsOwn> ON_ITS_OWN = new Declared<>() {
        private final Entry<End> blocks = needed("blocks", BlockFormats.END);

        @Override
        public Top.OnItsOwn make(Fields in) throws FileProblem {
            return new Top.OnItsOwn(blocks.of(in));
        }

        @Override
        public void write(Top.OnItsOwn top, Writing out) {
            out.put(blocks, top.end());
        }
    };

    private static final Format<Top> TOP = new OneOf<>(
            new Phrase("file.top"),
            List.of(
                    OneOf.Branch.of("follows", Top.FollowsStart.class, FOLLOWS_START),
                    OneOf.Branch.of("blocks", Top.OnItsOwn.class, ON_ITS_OWN)));

    static final Format<Piece> PIECE = new Pieces();

    private PieceFormats() {}

    /** What the parts are woven with; what is left out is the warp's yarn. */
    private record Materials(Optional<String> cord, Optional<String> waste) {
        static final Materials UNSAID = new Materials(Optional.empty(), Optional.empty());
    }

    private static final class Pieces extends Declared<Piece> {
        private final Entry<Integer> version = version("thrumwright", PieceFile.VERSION, "piece");
        private final Entry<String> title = needed("title", Types.text("like.title"));
        private final Entry<String> note = spare("note", Types.text("like.text"), "");
        private final Entry<Destiny> destiny = together(DestinyFormats.DESTINY);
        private final Entry<Loom> loom = needed("loom", LoomFormats.LOOM);
        private final Entry<Warp> warped = needed("warp", LoomFormats.WARP);
        private final Entry<List<Yarn>> yarns = needed("yarns", YarnFormats.YARNS);
        private final Entry<Materials> parts = usual("materials", MATERIALS, Materials.UNSAID);
        private final Entry<Design> design = needed("design", DesignFormats.DESIGN);
        private final Entry<Habits> habits = usual("habits", LoomFormats.HABITS, Habits.usual(UnitSystem.METRIC));
        private final Entry<End> from = needed("start", BlockFormats.END);
        private final Entry<Optional<Top>> top = optional("top", TOP);
        private final Entry<List<Ticks.Stepped>> ticks = spare("done", TickFormats.TICKS, List.of());
        private final Entry<List<MeasuredStep>> measures = spare("measured", TickFormats.MEASURES, List.of());
        private final Entry<List<Meant.Told>> meant = spare("meant", TickFormats.MEANT, List.of());

        @Override
        public Piece make(Fields in) throws FileProblem {
            version.of(in);
            Habits own = habits.of(in);
            List<Yarn> all = yarns.of(in);
            in.yarnsAre(ids(all));
            Warp warp = warped.of(in);
            End start = from.of(in);
            Materials materials = parts.of(in);
            return new Piece(
                    title.of(in),
                    note.of(in),
                    destiny.of(in),
                    loom.of(in),
                    warp,
                    all,
                    materials.cord().orElse(warp.yarnId()),
                    materials.waste().orElse(warp.yarnId()),
                    design.of(in),
                    own,
                    start,
                    top(in, start),
                    new Ticks(ticks.of(in)),
                    new Measures(measures.of(in)),
                    new Meant(meant.of(in)));
        }

        private Top top(Fields in, End start) throws FileProblem {
            Optional<Top> said = top.of(in);
            return said.isPresent() ? said.get() : Top.FollowsStart.withoutOrderingCords(start);
        }

        @Override
        public void write(Piece piece, Writing out) {
            out.put(version, PieceFile.VERSION).put(title, piece.title()).put(note, piece.note());
            out.put(destiny, piece.destiny()).put(loom, piece.loom()).put(warped, piece.warp());
            out.put(yarns, piece.yarns());
            out.put(parts, new Materials(Optional.of(piece.cordId()), Optional.of(piece.wasteId())));
            out.put(design, piece.design()).put(habits, piece.habits());
            out.put(from, piece.start()).put(top, Optional.of(piece.top()));
            out.put(ticks, piece.ticks().steps()).put(measures, piece.measures().all());
            out.put(meant, piece.meant().all());
        }
    }

    static Set<String> ids(List<Yarn> yarns) {
        Set<String> ids = new HashSet<>();
        for (Yarn yarn : yarns) {
            ids.add(yarn.id());
        }
        return ids;
    }
}

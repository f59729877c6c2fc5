package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import thrumwright.piece.Design;
import thrumwright.piece.Habits;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Top;
import thrumwright.yarn.Thickness;
import thrumwright.yarn.Yarn;

/** Writes a piece, its fields always in the same order. */
final class PieceWriter {
    private final Unknown unknown;

    private PieceWriter(Unknown unknown) {
        this.unknown = unknown;
    }

    static String write(Piece piece, Unknown unknown) {
        return Json.write(whole(piece, unknown));
    }

    /** A piece as an object, with its version. */
    static Node.Obj whole(Piece piece, Unknown unknown) {
        return new PieceWriter(unknown).piece(piece);
    }

    private Node.Obj piece(Piece piece) {
        Writing warp = new Writing()
                .with("width", piece.warp().width())
                .with("sett", piece.warp().sett().text())
                .with("yarn", piece.warp().yarnId())
                .with("woven", piece.warp().woven());
        Writing materials = new Writing().with("cord", piece.cordId()).with("waste", piece.wasteId());
        return new Writing()
                .with("thrumwright", PieceFile.VERSION)
                .with("title", piece.title())
                .withText("note", piece.note())
                .with("loom", loom(piece.loom()))
                .with("warp", warp.done(unknown, "/warp"))
                .with("yarns", yarns(piece.yarns(), unknown))
                .with("materials", materials.done(unknown, "/materials"))
                .with("design", design(piece.design()))
                .with("habits", habits(piece.habits()))
                .with("start", BlockWriter.blocks(piece.start().blocks(), unknown, "/start"))
                .with("top", top(piece.top()))
                .done(unknown, "");
    }

    private Node loom(Loom loom) {
        Writing writing = new Writing().with("name", loom.name()).with("open", loom.open());
        loom.uprights().ifPresent(posts -> writing.with("posts", posts(posts, unknown, "/loom/posts")));
        return writing.with("clearance", loom.clearance())
                .with("workingRoom", loom.workingRoom())
                .with("warpPerEnd", loom.warpPerEnd())
                .done(unknown, "/loom");
    }

    static Node posts(Loom.Uprights posts, Unknown unknown, String place) {
        return new Writing()
                .with("diameter", posts.diameter())
                .with("gap", posts.gap())
                .done(unknown, place);
    }

    static Node yarns(List<Yarn> yarns, Unknown unknown) {
        List<Node> items = new ArrayList<>();
        for (Yarn yarn : yarns) {
            items.add(yarn(yarn, unknown, "/yarns#" + yarn.id()));
        }
        return new Node.Arr(items, Node.Spot.NOWHERE);
    }

    private static Node yarn(Yarn yarn, Unknown unknown, String place) {
        Writing writing = new Writing()
                .with("id", yarn.id())
                .with("name", yarn.name())
                .with("colour", yarn.colour().text())
                .with("fibre", Choices.FIBRE.text(yarn.fibre()))
                .with("thickness", thickness(yarn.thickness()).done(unknown, place + "/thickness"))
                .with("firmness", Choices.FIRMNESS.text(yarn.firmness()));
        yarn.sample()
                .ifPresent(sample -> writing.with(
                        "sample",
                        new Writing()
                                .with("picks", sample.picks())
                                .with("height", sample.height())
                                .done(unknown, place + "/sample")));
        writing.with("stock", yarn.stock());
        yarn.usage()
                .ifPresent(usage -> writing.with(
                        "used",
                        new Writing()
                                .with("picks", usage.picks())
                                .with("length", usage.length())
                                .done(unknown, place + "/used")));
        return writing.done(unknown, place);
    }

    private static Writing thickness(Thickness thickness) {
        if (thickness instanceof Thickness.Measured measured) {
            return new Writing().with("diameter", measured.diameter());
        } else if (thickness instanceof Thickness.Wraps wraps) {
            return new Writing().with("wraps", wraps.wraps()).with("in", wraps.over());
        }
        Thickness.Counted counted = (Thickness.Counted) thickness;
        return new Writing()
                .with("count", counted.number())
                .with("plies", counted.plies())
                .with("system", Choices.COUNT.text(counted.system()));
    }

    private Node design(Design design) {
        Writing writing = new Writing()
                .with("height", design.height())
                .with("firstStripe", design.firstYarnId())
                .with("lastStripe", design.lastYarnId());
        if (design.lastShed().isPresent() || design.lastSide().isPresent()) {
            Writing last = new Writing();
            design.lastShed().ifPresent(shed -> last.with("shed", Choices.SHED.text(shed)));
            design.lastSide().ifPresent(side -> last.with("side", Choices.SIDE.text(side)));
            writing.with("lastPick", last.done(unknown, "/design/lastPick"));
        }
        if (design.relaxing() != 0) {
            writing.with("relaxing", design.relaxing());
        }
        return writing.done(unknown, "/design");
    }

    private Node habits(Habits habits) {
        return new Writing()
                .with("units", Choices.UNITS.text(habits.units()))
                .with("widthsOf", Choices.WIDTHS_OF.text(habits.widthsOf()))
                .with("step", habits.step())
                .with("tail", habits.tail())
                .with("tie", habits.tie())
                .with("ease", habits.ease())
                .with("butterfly", habits.handful())
                .with("overlap", habits.overlap())
                .done(unknown, "/habits");
    }

    private Node top(Top top) {
        if (top instanceof Top.OnItsOwn own) {
            return new Writing()
                    .with("blocks", BlockWriter.blocks(own.end().blocks(), unknown, "/top/blocks"))
                    .done(unknown, "/top");
        }
        Writing writing = new Writing().with("follows", "start");
        List<Node> leftOut = ((Top.FollowsStart) top)
                .leftOut().stream().sorted().<Node>map(Node.Text::of).toList();
        if (!leftOut.isEmpty()) {
            writing.with("leavingOut", new Node.Arr(leftOut, Node.Spot.NOWHERE));
        }
        return writing.done(unknown, "/top");
    }
}

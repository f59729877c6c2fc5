package thrumwright.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/** Reads a class. */
final class ClassReader {
    /** The field that marks a class, with its version. */
    static final String MARK = "thrumwrightClass";

    private static final String NONE = "none";

    private final Fields fields;
    private final ClassFile.PieceSource pieces;

    private ClassReader(Fields fields, ClassFile.PieceSource pieces) {
        this.fields = fields;
        this.pieces = pieces;
    }

    static ClassFile read(String text, ClassFile.PieceSource pieces) throws FileProblem {
        Map<String, Map<String, Node>> unknown = new HashMap<>();
        Fields fields = Fields.of(Json.read(text), unknown);
        PieceReader.version(fields, MARK, ClassFile.VERSION, "a class");
        ClassReader reader = new ClassReader(fields, pieces);
        Optional<String> name = fields.isText("piece") ? Optional.of(fields.text("piece", "")) : Optional.empty();
        ClassSet set = fields.made(reader::set);
        fields.done();
        return new ClassFile(set, name, new Unknown(unknown));
    }

    private ClassSet set() throws FileProblem {
        String title = fields.text("title", "the class's name");
        if (!fields.has("piece")) {
            throw fields.problem("“piece” is missing; give the name of its file, or the piece itself as an object.");
        }
        Piece piece = fields.isText("piece") ? named() : PieceReader.whole(fields.object("piece"));
        List<Yarn> more = fields.has("yarns") ? PieceReader.yarns(fields) : List.of();
        Piece whole = together(piece, more);
        List<ClassMember> members = new ArrayList<>();
        for (Fields member : fields.objectsByPosition("members", "member", ClassSet.MOST_MEMBERS)) {
            members.add(member.made(() -> checked(member(member, whole), whole)));
            member.done();
        }
        if (members.isEmpty()) {
            throw fields.problem(
                    "members", "a class has at least one member; give “{}” for a loom like the piece's.", null);
        }
        return new ClassSet(title, piece, more, members);
    }

    private Piece named() throws FileProblem {
        String name = fields.text("piece", "");
        String text;
        try {
            text = pieces.text(name);
        } catch (FileProblem e) {
            throw fields.problem("piece", e.getMessage(), e);
        }
        try {
            return PieceFile.read(text).piece();
        } catch (FileProblem e) {
            throw fields.problem("piece", "in “" + name + "”: " + e.getMessage(), e);
        }
    }

    private Piece together(Piece piece, List<Yarn> more) throws FileProblem {
        try {
            return ClassSet.together(piece, more);
        } catch (IllegalArgumentException e) {
            throw fields.problem("yarns", e.getMessage(), e);
        }
    }

    private static ClassMember checked(ClassMember member, Piece whole) {
        member.on(whole);
        return member;
    }

    private static ClassMember member(Fields fields, Piece whole) throws FileProblem {
        Set<String> ids = whole.yarns().stream().map(Yarn::id).collect(Collectors.toUnmodifiableSet());
        return new ClassMember(
                fields.text("name", "the weaver's name", ""),
                fields.has("loom") ? Optional.of(fields.text("loom", "what the loom is called")) : Optional.empty(),
                fields.optionalLength("width"),
                fields.optionalSett("sett"),
                posts(fields),
                fields.optionalLength("open"),
                fields.optionalLength("warpPerEnd"),
                fields.optionalYarn("firstStripe", ids),
                fields.optionalYarn("lastStripe", ids));
    }

    private static Optional<ClassMember.Posts> posts(Fields fields) throws FileProblem {
        if (!fields.isText("posts")) {
            Optional<Fields> posts = fields.optionalObject("posts");
            return posts.isPresent()
                    ? Optional.of(ClassMember.Posts.of(PieceReader.uprights(posts.get())))
                    : Optional.empty();
        }
        String text = fields.text("posts", "");
        if (!text.equals(NONE)) {
            throw fields.problem(
                    "posts", "this must be “none” or an object with “diameter” and “gap”, not “" + text + "”.", null);
        }
        return Optional.of(ClassMember.Posts.NONE);
    }

    /** How posts are written where a loom has none. */
    static String none() {
        return NONE;
    }
}

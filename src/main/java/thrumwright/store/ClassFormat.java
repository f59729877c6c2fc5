package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/** How a class stands in a file. */
final class ClassFormat {
    /** The field that marks a class, with its version. */
    static final String MARK = "thrumwrightClass";

    private static final String MEMBERS = "members";

    private ClassFormat() {}

    /** @param pieces where the piece comes from if only its file is named */
    static Format<ClassFile> with(ClassFile.PieceSource pieces) {
        var file = new Declared<ClassFile>();
        var version = file.version(MARK, ClassFile.VERSION, "class");
        var title = file.needed(
                "title", Types.text("like.class-title"), value -> value.set().title());
        var piece = file.optional("piece", new Woven(pieces), value -> Optional.of(Named.of(value)));
        var yarns = file.spare(
                "yarns", YarnFormats.YARNS, List.of(), value -> value.set().yarns());
        file.needed(MEMBERS, members(member -> {}), value -> value.set().members());
        return file.as(in -> {
            version.of(in);
            String called = title.of(in);
            Named woven = piece.of(in).orElseThrow(() -> in.problem(new Phrase("file.no-piece")));
            List<Yarn> more = yarns.of(in);
            Piece whole = together(in, woven.piece(), more);
            in.yarnsAre(PieceFormats.ids(whole.yarns()));
            List<ClassMember> members = in.needed(MEMBERS, members(member -> member.on(whole)));
            if (members.isEmpty()) {
                throw in.problem(MEMBERS, new Phrase("file.no-members"), null);
            }
            return new ClassFile(new ClassSet(called, woven.piece(), more, members), woven.name(), Unknown.none());
        });
    }

    private static Piece together(Fields in, Piece piece, List<Yarn> more) throws FileProblem {
        try {
            return ClassSet.together(piece, more);
        } catch (Refused e) {
            throw in.problem("yarns", e.why(), e);
        }
    }

    /** @param check refuses a member that can't be */
    private static ValueType<List<ClassMember>> members(Consumer<ClassMember> check) {
        return Types.list(member(check), "member", ClassSet.MOST_MEMBERS, Optional.empty());
    }

    private static Format<ClassMember> member(Consumer<ClassMember> check) {
        var member = new Declared<ClassMember>();
        var name = member.spare("name", Types.text("like.weaver"), "", ClassMember::name);
        var loom = member.optional("loom", Types.text("like.loom"), ClassMember::loom);
        var width = member.optional("width", Types.LENGTH, ClassMember::width);
        var sett = member.optional("sett", Types.SETT, ClassMember::sett);
        var posts = member.optional("posts", new PostsOrNone(), ClassMember::posts);
        var open = member.optional("open", Types.LENGTH, ClassMember::open);
        var warpPerEnd = member.optional("warpPerEnd", Types.LENGTH, ClassMember::warpPerEnd);
        var first = member.optional("firstStripe", Types.YARN, ClassMember::firstYarnId);
        var last = member.optional("lastStripe", Types.YARN, ClassMember::lastYarnId);
        return member.as(in -> {
            ClassMember made = new ClassMember(
                    name.of(in),
                    loom.of(in),
                    width.of(in),
                    sett.of(in),
                    posts.of(in),
                    open.of(in),
                    warpPerEnd.of(in),
                    first.of(in),
                    last.of(in));
            check.accept(made);
            return made;
        });
    }

    /** A piece, and the name of its file if it has one of its own. */
    private record Named(Optional<String> name, Piece piece) {
        static Named of(ClassFile file) {
            return new Named(file.pieceName(), file.set().piece());
        }
    }

    /** The piece that a class weaves: the name of its file, or the piece itself. */
    private record Woven(ClassFile.PieceSource pieces) implements ValueType<Named> {
        private static final ValueType<String> NAME = Types.text("like.text");

        @Override
        public Phrase like() {
            return PieceFormats.PIECE.like();
        }

        @Override
        public Named read(Fields in, String field) throws FileProblem {
            if (!in.isText(field)) {
                return new Named(Optional.empty(), PieceFormats.PIECE.read(in, field));
            }
            String name = NAME.read(in, field);
            return new Named(Optional.of(name), piece(in, field, name));
        }

        private Piece piece(Fields in, String field, String name) throws FileProblem {
            String text;
            try {
                text = pieces.text(name);
            } catch (FileProblem e) {
                throw in.problem(field, e.why(), e);
            }
            try {
                PieceFile file = PieceFile.read(text);
                in.keep(
                        field,
                        file.unknown().told(why -> new Phrase("file.in-piece", Map.of("name", name, "why", why))));
                return file.piece();
            } catch (FileProblem e) {
                throw in.problem(field, new Phrase("file.in-piece", Map.of("name", name, "why", e.why())), e);
            }
        }

        @Override
        public Node node(Named value, Unknown around, String field) {
            return value.name()
                    .map(name -> NAME.node(name, around, field))
                    .orElseGet(() -> PieceFormats.PIECE.node(value.piece(), around, field));
        }
    }

    /** The posts of a loom, or that it has none. */
    private record PostsOrNone() implements ValueType<ClassMember.OwnPosts> {
        private static final Node.Text NONE = Node.Text.of("none");

        @Override
        public Phrase like() {
            return LoomFormats.POSTS.like();
        }

        @Override
        public ClassMember.OwnPosts read(Fields in, String field) throws FileProblem {
            if (!(in.node(field) instanceof Node.Text text)) {
                return ClassMember.OwnPosts.of(LoomFormats.POSTS.read(in, field));
            } else if (text.value().equals(NONE.value())) {
                return ClassMember.OwnPosts.NONE;
            }
            throw in.problem(field, new Phrase("file.posts", Map.of("typed", text.value())), null);
        }

        @Override
        public Node node(ClassMember.OwnPosts posts, Unknown around, String field) {
            return posts.uprights()
                    .<Node>map(beside -> LoomFormats.POSTS.node(beside, around, field))
                    .orElse(NONE);
        }
    }
}

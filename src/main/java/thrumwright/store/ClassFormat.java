package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;
import thrumwright.measure.Refused;
import thrumwright.measure.Sett;
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
        return new Classes(pieces);
    }

    private static final class Classes extends Declared<ClassFile> {
        private final Entry<Integer> version = version(MARK, ClassFile.VERSION, "class");
        private final Entry<String> title = needed("title", Types.text("like.class-title"));
        private final Entry<Optional<Named>> piece;
        private final Entry<List<Yarn>> yarns;
        private final Entry<List<ClassMember>> members;

        Classes(ClassFile.PieceSource pieces) {
            this.piece = optional("piece", new Woven(pieces));
            this.yarns = spare("yarns", YarnFormats.YARNS, List.of());
            this.members = needed(MEMBERS, members(Optional.empty()));
        }

        private static ValueType<List<ClassMember>> members(Optional<Piece> on) {
            return new Listed<>(new Member(on), "member", ClassSet.MOST_MEMBERS);
        }

        @Override
        public ClassFile make(Fields in) throws FileProblem {
            version.of(in);
            String called = title.of(in);
            Optional<Named> named = piece.of(in);
            if (named.isEmpty()) {
                throw in.problem(new Phrase("file.no-piece"));
            }
            Named woven = named.get();
            List<Yarn> more = yarns.of(in);
            Piece whole = together(in, woven.piece(), more);
            in.yarnsAre(PieceFormats.ids(whole.yarns()));
            List<ClassMember> all = in.needed(MEMBERS, members(Optional.of(whole)));
            if (all.isEmpty()) {
                throw in.problem(MEMBERS, new Phrase("file.no-members"), null);
            }
            return new ClassFile(new ClassSet(called, woven.piece(), more, all), woven.name(), Unknown.none());
        }

        private static Piece together(Fields in, Piece piece, List<Yarn> more) throws FileProblem {
            try {
                return ClassSet.together(piece, more);
            } catch (Refused e) {
                throw in.problem("yarns", e.why(), e);
            }
        }

        @Override
        public void write(ClassFile file, Writing out) {
            out.put(version, ClassFile.VERSION).put(title, file.set().title());
            out.put(piece, Optional.of(Named.of(file))).put(yarns, file.set().yarns());
            out.put(members, file.set().members());
        }
    }

    private static final class Member extends Declared<ClassMember> {
        private final Optional<Piece> on;
        private final Entry<String> name = spare("name", Types.text("like.weaver"), "");
        private final Entry<Optional<String>> loom = optional("loom", Types.text("like.loom"));
        private final Entry<Optional<Length>> width = optional("width", Types.LENGTH);
        private final Entry<Optional<Sett>> sett = optional("sett", Types.SETT);
        private final Entry<Optional<ClassMember.OwnPosts>> posts = optional("posts", new PostsOrNone());
        private final Entry<Optional<Length>> open = optional("open", Types.LENGTH);
        private final Entry<Optional<Length>> warpPerEnd = optional("warpPerEnd", Types.LENGTH);
        private final Entry<Optional<String>> first = optional("firstStripe", Types.YARN);
        private final Entry<Optional<String>> last = optional("lastStripe", Types.YARN);

        /** @param on the piece that each must be able to weave, once it is known */
        Member(Optional<Piece> on) {
            this.on = on;
        }

        @Override
        public ClassMember make(Fields in) throws FileProblem {
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
            on.ifPresent(made::on);
            return made;
        }

        @Override
        public void write(ClassMember member, Writing out) {
            out.put(name, member.name()).put(loom, member.loom()).put(width, member.width());
            out.put(sett, member.sett()).put(posts, member.posts()).put(open, member.open());
            out.put(warpPerEnd, member.warpPerEnd());
            out.put(first, member.firstYarnId()).put(last, member.lastYarnId());
        }
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
        public Named read(Fields in, String field, Node there) throws FileProblem {
            if (!(there instanceof Node.Text)) {
                return new Named(Optional.empty(), PieceFormats.PIECE.read(in, field, there));
            }
            String name = NAME.read(in, field, there);
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
        public ClassMember.OwnPosts read(Fields in, String field, Node there) throws FileProblem {
            if (!(there instanceof Node.Text text)) {
                return ClassMember.OwnPosts.of(LoomFormats.POSTS.read(in, field, there));
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

package thrumwright.store;

import java.util.ArrayList;
import java.util.List;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;

/** Writes a class, its fields always in the same order. */
final class ClassWriter {
    private ClassWriter() {}

    static String write(ClassFile file) {
        ClassSet set = file.set();
        Unknown unknown = file.unknown();
        Node piece = file.pieceName()
                .<Node>map(Node.Text::of)
                .orElseGet(() -> PieceWriter.whole(set.piece(), unknown.within("/piece")));
        Writing writing = new Writing()
                .with(ClassReader.MARK, ClassFile.VERSION)
                .with("title", set.title())
                .with("piece", piece);
        if (!set.yarns().isEmpty()) {
            writing.with("yarns", PieceWriter.yarns(set.yarns(), unknown));
        }
        return Json.write(
                writing.with("members", members(set.members(), unknown)).done(unknown, ""));
    }

    private static Node members(List<ClassMember> members, Unknown unknown) {
        List<Node> items = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            items.add(member(members.get(i), unknown, "/members#" + i));
        }
        return new Node.Arr(items, Node.Spot.NOWHERE);
    }

    private static Node member(ClassMember member, Unknown unknown, String place) {
        Writing writing = new Writing().withText("name", member.name());
        member.loom().ifPresent(loom -> writing.with("loom", loom));
        writing.with("width", member.width());
        member.sett().ifPresent(sett -> writing.with("sett", sett.text()));
        member.posts().ifPresent(posts -> writing.with("posts", posts(posts, unknown, place + "/posts")));
        writing.with("open", member.open()).with("warpPerEnd", member.warpPerEnd());
        member.firstYarnId().ifPresent(id -> writing.with("firstStripe", id));
        member.lastYarnId().ifPresent(id -> writing.with("lastStripe", id));
        return writing.done(unknown, place);
    }

    private static Node posts(ClassMember.Posts posts, Unknown unknown, String place) {
        return posts.uprights()
                .map(beside -> PieceWriter.posts(beside, unknown, place))
                .orElseGet(() -> Node.Text.of(ClassReader.none()));
    }
}

package thrumwright.editor.form;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import thrumwright.editor.edit.ClassSession;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.Shown;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/** The fields of a class and of its selected loom. An empty field shows in grey what it is in the piece. */
public final class MemberForm {
    private static final String DIAMETER = "22 mm";
    private static final String GAP = "30 mm";

    private final ClassSession session;
    private final Texts texts;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final Map<String, String> unfinished = new HashMap<>();
    private FieldColumn fields;
    private JTextField name;
    private Seen seen = new Seen(-1, 0);

    /** Which loom is shown, and of how many. */
    private record Seen(int loom, int of) {}

    /** What a loom's posts are. */
    enum PostsKind {
        AS_PIECE,
        NONE,
        OWN
    }

    public MemberForm(ClassSession session, Texts texts) {
        this.session = session;
        this.texts = texts;
        session.listen(this::changed);
        changed();
    }

    public JComponent component() {
        return panel;
    }

    /** How many fields hold something that can't be taken. */
    public int unfinished() {
        return unfinished.size();
    }

    /** Takes over whatever is being typed. */
    public void takeOver() {
        fields.takeOver();
        session.endRun();
    }

    /** Lets the weaver type the name of the selected loom. */
    public void takeKeyboard() {
        name.requestFocusInWindow();
    }

    private void changed() {
        Seen now = new Seen(session.selected(), session.set().members().size());
        if (now.of() != seen.of()) {
            // Other looms have these positions now.
            unfinished.keySet().removeIf(key -> !key.startsWith("class/"));
        }
        if (now.equals(seen)) {
            fields.refresh();
            return;
        }
        seen = now;
        build();
    }

    private void build() {
        fields = new FieldColumn(texts, () -> piece().habits().units());
        FieldColumn.Section<ClassSet> whole = fields.about(holder("class", set -> set, (set, other) -> other));
        whole.text("class.title", ClassSet::title, (set, typed) -> set.withTitle(typed.strip()));
        fields.prose(() -> texts.say("class.loom.heading", Map.of("number", session.selected() + 1)));
        int index = seen.loom();
        FieldColumn.Section<ClassMember> one = fields.about(holder(
                String.valueOf(index), set -> set.members().get(index), (set, member) -> set.with(index, member)));
        name = one.text("member.name", ClassMember::name, (member, typed) -> member.withName(typed.strip()));
        grey(name, piece -> texts.say("member.name.blank"));
        grey(
                one.text(
                        "member.loom",
                        member -> member.loom().orElse(""),
                        (member, typed) ->
                                member.withLoom(Optional.of(typed.strip()).filter(text -> !text.isEmpty()))),
                piece -> piece.loom().name());
        grey(
                one.lengthOrNone("member.width", ClassMember::width, ClassMember::withWidth),
                piece -> Shown.here(piece.warp().width().text()));
        grey(
                one.measure(
                        "member.sett",
                        member -> member.sett().map(Sett::text).orElse(""),
                        (member, typed) ->
                                member.withSett(typed.isBlank() ? Optional.empty() : Optional.of(Sett.parse(typed)))),
                piece -> Shown.here(piece.warp().sett().text()));
        posts(one);
        grey(
                one.lengthOrNone("member.open", ClassMember::open, ClassMember::withOpen),
                piece -> Shown.here(piece.loom().open().text()));
        grey(
                one.lengthOrNone("member.per-end", ClassMember::warpPerEnd, ClassMember::withWarpPerEnd),
                piece -> piece.loom()
                        .warpPerEnd()
                        .map(Length::text)
                        .map(Shown::here)
                        .orElse(""));
        one.choice("member.first", this::yarns, ClassMember::firstYarnId, ClassMember::withFirstYarn);
        one.choice("member.last", this::yarns, ClassMember::lastYarnId, ClassMember::withLastYarn);
        show();
    }

    private void show() {
        JScrollPane scroll = new JScrollPane(fields);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        panel.removeAll();
        panel.add(scroll);
        panel.revalidate();
        panel.repaint();
    }

    private void posts(FieldColumn.Section<ClassMember> one) {
        one.oneOf("member.posts", "posts", PostsKind.values(), MemberForm::kind, this::withKind);
        grey(
                one.measure(
                        "member.post",
                        member -> own(member)
                                .map(posts -> posts.diameter().text())
                                .orElse(""),
                        (member, typed) -> withPosts(
                                member,
                                typed,
                                thick -> new Loom.Uprights(thick, usual(member).gap()))),
                piece -> piece.loom()
                        .uprights()
                        .map(posts -> Shown.here(posts.diameter().text()))
                        .orElse(""));
        grey(
                one.measure(
                        "member.gap",
                        member -> own(member).map(posts -> posts.gap().text()).orElse(""),
                        (member, typed) -> withPosts(
                                member,
                                typed,
                                gap -> new Loom.Uprights(usual(member).diameter(), gap))),
                piece -> piece.loom()
                        .uprights()
                        .map(posts -> Shown.here(posts.gap().text()))
                        .orElse(""));
    }

    private static Optional<Loom.Uprights> own(ClassMember member) {
        return member.posts().flatMap(ClassMember.OwnPosts::uprights);
    }

    private static PostsKind kind(ClassMember member) {
        return member.posts()
                .map(posts -> posts.uprights().isEmpty() ? PostsKind.NONE : PostsKind.OWN)
                .orElse(PostsKind.AS_PIECE);
    }

    private ClassMember withKind(ClassMember member, PostsKind kind) {
        return member.withPosts(
                switch (kind) {
                    case AS_PIECE -> Optional.empty();
                    case NONE -> Optional.of(ClassMember.OwnPosts.NONE);
                    case OWN -> Optional.of(ClassMember.OwnPosts.of(usual(member)));
                });
    }

    /** The loom's own posts, else those it has from the piece, else any. */
    private Loom.Uprights usual(ClassMember member) {
        return own(member)
                .or(() -> session.set().piece().loom().uprights())
                .orElseGet(() -> new Loom.Uprights(Length.parse(DIAMETER), Length.parse(GAP)));
    }

    /** Posts of its own with another measure; an empty field makes them as in the piece. */
    private ClassMember withPosts(ClassMember member, String typed, Function<Length, Loom.Uprights> with) {
        return member.withPosts(
                Typing.lengthOrNone(typed, piece().habits().units()).map(with).map(ClassMember.OwnPosts::of));
    }

    private Piece piece() {
        return session.set().piece();
    }

    private List<Choice<Optional<String>>> yarns() {
        List<Choice<Optional<String>>> yarns = new ArrayList<>();
        yarns.add(Choice.of(Optional.empty(), texts.say("choice.as-piece")));
        for (Yarn yarn : session.set().withAllYarns().yarns()) {
            yarns.add(new Choice<>(Optional.of(yarn.id()), yarn.name(), new Swatch(yarn.colour())));
        }
        return yarns;
    }

    /** Shows what an empty field stands for. */
    private void grey(JTextField field, Function<Piece, String> value) {
        Field follow = () -> field.putClientProperty(
                FlatClientProperties.PLACEHOLDER_TEXT,
                value.apply(session.plan().plans().get(session.selected()).piece()));
        follow.refresh();
        fields.follow(follow);
    }

    private <T> Holder<T> holder(String thing, Function<ClassSet, T> part, BiFunction<ClassSet, T, ClassSet> with) {
        return new PartOfClass<>(thing, part, with);
    }

    private final class PartOfClass<T> implements Holder<T> {
        private final String thing;
        private final Function<ClassSet, T> part;
        private final BiFunction<ClassSet, T, ClassSet> with;

        PartOfClass(String thing, Function<ClassSet, T> part, BiFunction<ClassSet, T, ClassSet> with) {
            this.thing = thing;
            this.part = part;
            this.with = with;
        }

        @Override
        public Optional<T> value() {
            return Optional.of(part.apply(session.set()));
        }

        @Override
        public void change(String label, UnaryOperator<T> change, Object run) {
            session.edit(set -> with.apply(set, change.apply(part.apply(set))), run);
        }

        @Override
        public void endRun() {
            session.endRun();
        }

        @Override
        public void dropRun(Object run) {
            session.dropRun(run);
        }

        @Override
        public void keep(String field, String typed) {
            unfinished.put(thing + "/" + field, typed);
        }

        @Override
        public void forget(String field) {
            unfinished.remove(thing + "/" + field);
        }

        @Override
        public Optional<String> kept(String field) {
            return Optional.ofNullable(unfinished.get(thing + "/" + field));
        }
    }
}

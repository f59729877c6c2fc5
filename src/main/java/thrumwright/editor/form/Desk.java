package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import thrumwright.editor.edit.Edit;
import thrumwright.editor.edit.Edits;
import thrumwright.editor.edit.Session;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Stash;

/** What all fields of a window share, with whatever was typed that isn't right yet. */
public final class Desk {
    private final Session session;
    private final Edits edits;
    private final Texts texts;
    private final Supplier<Stash> stash;
    private final Map<String, String> unfinished = new HashMap<>();
    private final List<Runnable> takers = new ArrayList<>();

    public Desk(Session session, Edits edits, Texts texts) {
        this(session, edits, texts, Stash::empty);
    }

    /** @param stash looms and yarns that the weaver has */
    public Desk(Session session, Edits edits, Texts texts, Supplier<Stash> stash) {
        this.session = session;
        this.edits = edits;
        this.texts = texts;
        this.stash = stash;
    }

    public Session session() {
        return session;
    }

    public Edits edits() {
        return edits;
    }

    public Texts texts() {
        return texts;
    }

    /** Looms and yarns that the weaver has. */
    Stash stash() {
        return stash.get();
    }

    /** A part of the piece as fields see it. */
    <T> Holder<T> holder(Subject<T> subject) {
        return new PartHolder<>(subject);
    }

    /**
     * Changes a part of the piece.
     *
     * @param run as in {@link Session#edit(Edit, Object)}
     */
    <T> void change(Subject<T> subject, String label, UnaryOperator<T> change, Object run) {
        Edit edit = edits.field(
                label,
                subject.thing(),
                piece -> subject.in()
                        .apply(piece)
                        .map(part -> subject.with().apply(piece, change.apply(part)))
                        .orElse(piece));
        session.edit(edit, run);
    }

    /** How many fields hold something that can't be taken yet. */
    public int unfinished() {
        return unfinished.size();
    }

    /** Forgets everything unfinished, when another piece comes. */
    public void clear() {
        unfinished.clear();
    }

    void whenTaken(Runnable taker) {
        takers.add(taker);
    }

    void noLonger(Runnable taker) {
        takers.remove(taker);
    }

    /** Takes over whatever is being typed, as a command is about to run. */
    public void takeOver() {
        List.copyOf(takers).forEach(Runnable::run);
        session.endRun();
    }

    private final class PartHolder<T> implements Holder<T> {
        private final Subject<T> subject;

        PartHolder(Subject<T> subject) {
            this.subject = subject;
        }

        @Override
        public Optional<T> value() {
            return subject.in().apply(session.shown());
        }

        @Override
        public void change(String label, UnaryOperator<T> change, Object run) {
            Desk.this.change(subject, label, change, run);
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
            unfinished.put(key(field), typed);
        }

        @Override
        public void forget(String field) {
            unfinished.remove(key(field));
        }

        @Override
        public Optional<String> kept(String field) {
            return Optional.ofNullable(unfinished.get(key(field)));
        }

        private String key(String field) {
            return subject.key() + "/" + field;
        }
    }
}

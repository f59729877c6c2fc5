package thrumwright.editor.files;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Piece;

/** In which parts two states of a document differ, by the names of the parts in the texts. */
public final class Differences {
    private static final List<Part<Piece>> OF_PIECE = List.of(
            new Part<>("title", Piece::title),
            new Part<>("note", Piece::note),
            new Part<>("loom", Piece::loom),
            new Part<>("warp", Piece::warp),
            new Part<>("yarns", Piece::yarns),
            new Part<>("yarns", Piece::cordId),
            new Part<>("yarns", Piece::wasteId),
            new Part<>("design", Piece::design),
            new Part<>("habits", Piece::habits),
            new Part<>("start", Piece::start),
            new Part<>("top", Piece::top));

    private static final List<Part<ClassSet>> OF_CLASS = List.of(
            new Part<>("title", ClassSet::title),
            new Part<>("piece", ClassSet::piece),
            new Part<>("yarns", ClassSet::yarns),
            new Part<>("looms", ClassSet::members));

    private Differences() {}

    private record Part<T>(String name, Function<T, Object> value) {
        boolean differs(T one, T other) {
            return !value.apply(one).equals(value.apply(other));
        }
    }

    public static List<String> of(Piece one, Piece other) {
        return of(OF_PIECE, one, other);
    }

    public static List<String> of(ClassSet one, ClassSet other) {
        return of(OF_CLASS, one, other);
    }

    private static <T> List<String> of(List<Part<T>> parts, T one, T other) {
        List<String> names = new ArrayList<>();
        parts.stream().filter(part -> part.differs(one, other)).map(Part::name).forEach(names::add);
        return names.stream().distinct().toList();
    }
}

package thrumwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.Unit;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.yarn.Yarn;

/** Classes of every sort from a seed: the same seed, the same classes. */
public final class RandomClasses {
    private static final String[] NAMES = {
        "",
        "Asta",
        "Bo",
        "Asta",
        "Ragnfríður Þorgerður Sigurðardóttir-Featherstonehaugh",
        "Överlångtnamnutanmellanslagochutanbindestreckalls",
        "an “odd” name / with \\ signs?",
        "潮"
    };

    private final RandomPieces pieces;
    private final RandomGenerator random;

    public RandomClasses(long seed) {
        this.pieces = new RandomPieces(seed);
        this.random = pieces.random();
    }

    public RandomGenerator random() {
        return random;
    }

    /** Of one to eight members. */
    public ClassSet next() {
        return next(random.nextInt(1, 9));
    }

    public ClassSet next(int members) {
        return next(members, pieces.next());
    }

    public ClassSet next(int members, Piece piece) {
        List<Yarn> more = random.nextBoolean()
                ? List.of()
                : List.of(piece.yarns().get(0).withId("more").withStock(Optional.empty()));
        Piece whole = ClassSet.together(piece, more);
        List<ClassMember> all = new ArrayList<>();
        while (all.size() < members) {
            ClassMember member = member(whole);
            if (fits(member, whole)) {
                all.add(member);
            }
        }
        return new ClassSet(name(), piece, more, all);
    }

    private static boolean fits(ClassMember member, Piece piece) {
        try {
            member.on(piece);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private ClassMember member(Piece piece) {
        double width = piece.warp().width().mm() * random.nextDouble(0.6, 1.2);
        double sett = piece.warp().sett().perMillimetre() * random.nextDouble(0.7, 1.1);
        return new ClassMember(
                name(),
                maybe(name()),
                maybe(Length.of(Math.rint(width), Unit.MILLIMETRE)),
                maybe(Sett.parse(Math.max(1, Math.round(sett * 100)) + "/10 cm")),
                maybe(posts()),
                maybe(Length.of(random.nextInt(40, 250), Unit.CENTIMETRE)),
                maybe(Length.of(random.nextInt(50, 300), Unit.CENTIMETRE)),
                maybe(yarn(piece)),
                maybe(yarn(piece)));
    }

    private ClassMember.OwnPosts posts() {
        return random.nextInt(3) == 0
                ? ClassMember.OwnPosts.NONE
                : ClassMember.OwnPosts.of(
                        new Loom.Uprights(Length.of(random.nextInt(8, 40), Unit.MILLIMETRE), Length.parse("1/2 in")));
    }

    private String yarn(Piece piece) {
        return piece.yarns().get(random.nextInt(piece.yarns().size())).id();
    }

    private String name() {
        return NAMES[random.nextInt(NAMES.length)];
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextInt(3) == 0 ? Optional.of(value) : Optional.empty();
    }
}

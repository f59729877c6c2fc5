package thrumwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.house.SourceFigures.Asked;
import thrumwright.house.SourceFigures.Measured;
import thrumwright.house.SourceFigures.Method;
import thrumwright.house.SourceFigures.Type;

/** Rooms stay small enough to be read at a glance. {@code mvn -q test -Dtest=FiguresTest} says where they don't. */
class FiguresTest {
    private static final SourceFigures FIGURES = SourceFigures.of(Path.of("src/main/java"));

    /** Blocks and sorts of blocks. */
    private static final Set<String> KINDS = Kinds.namesOfAll();

    private static final Pattern UNIT = Pattern.compile(
            "\\b(mm²?|(milli|centi)?metres?|g|grams?|kg|tex|points?|pixels?|radians?|degrees?|seconds?|ms|%|percent|spaces?"
                    + "|ends|picks|rows|times|turns|widths?|share|factor|ratio|no unit|minutes|bytes|units?)\\b|%|°");
    private static final Pattern RANGE = Pattern.compile(
            "\\b(or more|or less|more than|less than|at least|at most|from|up to|between|never|any|either sign|negative"
                    + "|finite|not over|no range|above|below|within)\\b|≥|≤"
                    + "|\\d to (\\d|\\{@link)|\\} to \\{@link");

    private static int share(List<Integer> sorted, double share) {
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }

    private static <T> List<Integer> sorted(List<T> all, Function<T, Integer> lines) {
        return all.stream().map(lines).sorted().toList();
    }

    @Test
    void classesAreSmall() {
        List<Integer> lines = sorted(FIGURES.types(), Type::lines);
        assertThat(share(lines, 0.5)).as("median of class lines").isLessThanOrEqualTo(70);
        assertThat(share(lines, 0.9)).as("90th percentile of class lines").isLessThanOrEqualTo(180);
        assertThat(FIGURES.types().stream().filter(type -> type.lines() > 400)).isEmpty();
    }

    @Test
    void methodsAreShort() {
        List<Integer> lines = sorted(FIGURES.methods(), Method::lines);
        assertThat(share(lines, 0.5)).as("median of method lines").isLessThanOrEqualTo(5);
        assertThat(share(lines, 0.9)).as("90th percentile of method lines").isLessThanOrEqualTo(13);
        assertThat(FIGURES.methods().stream().filter(method -> method.lines() > 45))
                .isEmpty();
    }

    @Test
    void nobodyAsksForMoreThanSevenThings() {
        assertThat(FIGURES.methods().stream().filter(method -> method.parameters() > 7))
                .isEmpty();
    }

    @Test
    void whatIsMadeStays() {
        assertThat(FIGURES.finalFields())
                .as("share of instance fields that are final")
                .isGreaterThanOrEqualTo(0.92);
    }

    @Test
    void measuresSayUnitAndRange() {
        assertThat(FIGURES.measured().stream()
                        .filter(method -> !UNIT.matcher(method.says()).find()
                                || !RANGE.matcher(method.says()).find())
                        .map(Measured::where))
                .isEmpty();
    }

    @Test
    void kindsAreRarelyToldApartByHand() {
        List<Asked> asked = FIGURES.asked().stream()
                .filter(one -> !one.room().equals("thrumwright.block"))
                .filter(one -> KINDS.contains(one.kind().replaceAll(" .*", "")))
                .toList();
        assertThat(asked).hasSizeLessThan(40);
    }

    @Test
    void aNameMeansOneThing() {
        Set<String> seen = new TreeSet<>();
        Set<String> twice = FIGURES.types().stream()
                .map(Type::name)
                .filter(name -> !seen.add(name))
                .collect(Collectors.toCollection(TreeSet::new));
        FIGURES.nested().stream().filter(seen::contains).forEach(twice::add);
        assertThat(twice).isEmpty();
    }
}

package thrumwright.plan.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.words.FindingWords;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

class ClassPlanTest {
    private static final Piece PANEL = Pieces.panel();

    private static ClassSet set(Piece piece, ClassMember... members) {
        return new ClassSet("Tuesday", piece, List.of(), List.of(members));
    }

    /** The class takes what its looms take, no more and no less. */
    @Test
    void totalsAreTheSumsOfWhatEachLoomTakes() {
        RandomClasses classes = new RandomClasses(11);
        for (int i = 0; i < Seeds.of(150); i++) {
            ClassSet set = classes.next();
            Map<String, double[]> sums = new TreeMap<>();
            for (ClassMember member : set.members()) {
                for (YarnTotal total : Plan.of(member.on(set.withAllYarns())).totals()) {
                    double[] sum = sums.computeIfAbsent(total.yarn().id(), none -> new double[3]);
                    sum[0] += total.inWarp();
                    sum[1] += total.inEnds();
                    sum[2] += total.grams();
                }
            }
            ClassPlan plan = ClassPlan.of(set);
            assertThat(plan.totals()).hasSize(sums.size());
            for (YarnTotal total : plan.totals()) {
                double[] sum = sums.get(total.yarn().id());
                assertThat(total.inWarp()).isCloseTo(sum[0], within(1e-6 * (1 + sum[0])));
                assertThat(total.inEnds()).isCloseTo(sum[1], within(1e-6 * (1 + sum[1])));
                assertThat(total.grams()).isCloseTo(sum[2], within(1e-6 * (1 + sum[2])));
            }
        }
    }

    /** The panel's warp takes 72 × 80 cm = 57.6 m and its ends some metres: 100 m are enough for one loom, not for two. */
    @Test
    void whatThereIsOfAYarnIsThereOnceForTheWholeClass() {
        Piece stocked = PANEL.withYarns(PANEL.yarns().stream()
                .map(yarn -> yarn.id().equals("cord") ? yarn.withStock(Optional.of(Length.parse("100 m"))) : yarn)
                .toList());
        ClassMember asta = ClassMember.named("Asta");
        assertThat(ClassPlan.of(set(stocked, asta)).findings()).isEmpty();
        List<ClassFinding> short_ =
                ClassPlan.of(set(stocked, asta, ClassMember.named("Bo"))).findings();
        assertThat(short_).singleElement().satisfies(found -> {
            assertThat(found.finding().code()).isEqualTo(Code.STOCK_SHORT);
            assertThat(found.members()).isEmpty();
            assertThat(FindingWords.of(stocked, Locale.UK).say(found.finding())).contains("there are 100 m");
        });
    }

    @Test
    void whatIsSaidOfSeveralAlikeIsSaidOnce() {
        ClassMember none = ClassMember.named("").withPosts(Optional.of(ClassMember.OwnPosts.NONE));
        ClassMember low = ClassMember.named("").withOpen(Optional.of(Length.parse("40 cm")));
        ClassPlan plan = ClassPlan.of(set(PANEL, none, ClassMember.named(""), none.withName("Eskil"), low));
        assertThat(plan.findings()).hasSize(2);
        assertThat(plan.findings().get(0).finding().code()).isEqualTo(Code.DOES_NOT_FIT);
        assertThat(plan.findings().get(0).members()).containsExactly(3);
        assertThat(plan.findings().get(1).finding().code()).isEqualTo(Code.NO_POSTS);
        assertThat(plan.findings().get(1).members()).containsExactly(0, 2);
        assertThat(plan.has(Severity.PROBLEM)).isTrue();
        assertThat(ClassPlan.of(set(PANEL, none)).has(Severity.PROBLEM)).isFalse();
    }

    /** Every member's plan is the plan of the piece on that loom, but for what there is of a yarn. */
    @Test
    void everyPlanIsThatOfThePieceOnItsLoom() {
        Loom.Uprights posts = new Loom.Uprights(Length.parse("16 mm"), Length.parse("2 cm"));
        ClassMember fenna = ClassMember.named("Fenna")
                .withWidth(Optional.of(Length.parse("18 cm")))
                .withPosts(Optional.of(ClassMember.OwnPosts.of(posts)));
        ClassPlan plan = ClassPlan.of(set(PANEL, ClassMember.named("Asta"), fenna));
        assertThat(plan.plans().get(0)).isEqualTo(Plan.of(PANEL));
        assertThat(plan.plans().get(1)).isEqualTo(Plan.of(fenna.on(PANEL)));
    }
}

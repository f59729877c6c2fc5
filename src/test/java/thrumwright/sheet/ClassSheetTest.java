package thrumwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thrumwright.measure.Length;
import thrumwright.measure.Sett;
import thrumwright.measure.Shown;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.plan.BandTotal;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.plan.words.Words;
import thrumwright.testing.Pieces;
import thrumwright.testing.RandomClasses;
import thrumwright.testing.Seeds;

class ClassSheetTest {
    private static final Piece PANEL = Pieces.panel();

    private static ClassSet set(Piece piece, ClassMember... members) {
        return new ClassSet("Tuesday", piece, List.of(), List.of(members));
    }

    private static ClassSheet sheet(ClassSet set) {
        return ClassSheet.of(ClassPlan.of(set), Locale.UK);
    }

    private static List<ClassSheet.Line> lines(ClassSheet sheet) {
        return sheet.cuts().stream().flatMap(cuts -> cuts.lines().stream()).toList();
    }

    /** All that is cut together is all that the looms' own sheets ask to cut. */
    @Test
    void theCuttingListIsTheSumOfAllCutLists() {
        RandomClasses classes = new RandomClasses(21);
        for (int i = 0; i < Seeds.of(60); i++) {
            ClassPlan plan = ClassPlan.of(classes.next());
            ClassSheet sheet = ClassSheet.of(plan, Locale.UK);
            int pieces = 0;
            for (Plan one : plan.plans()) {
                pieces += StepSheet.of(one, Locale.UK).cuts().stream()
                        .mapToInt(CutLine::count)
                        .sum();
            }
            assertThat(lines(sheet).stream().mapToInt(ClassSheet.Line::count).sum())
                    .isEqualTo(pieces);
            for (YarnTotal total : plan.totals()) {
                assertSum(
                        total.inEnds() + total.sewnOn(),
                        sheet,
                        cuts -> cuts.yarn()
                                .map(yarn -> yarn.strandsOf(total.yarn().id()))
                                .orElse(0));
            }
            for (ClassSheet.Cuts band : sheet.cuts()) {
                if (band.yarn().isEmpty()) {
                    assertSum(bands(plan, band.heading()), sheet, cuts -> cuts.equals(band) ? 1 : 0);
                }
            }
        }
    }

    /** @param times how often a length of a list counts */
    private static void assertSum(double total, ClassSheet sheet, ToIntFunction<ClassSheet.Cuts> times) {
        double cut = 0;
        int count = 0;
        for (ClassSheet.Cuts cuts : sheet.cuts()) {
            int each = times.applyAsInt(cuts);
            for (ClassSheet.Line line : cuts.lines()) {
                cut += each * line.count() * line.mm();
                count += each * line.count();
            }
        }
        assertThat(cut).isCloseTo(total, within(0.005 * count + 1e-6));
    }

    /** The bands of the width and thickness that a heading names. */
    private static double bands(ClassPlan plan, String heading) {
        Shown shown = plan.set().piece().shown();
        return BandTotal.of(plan.plans()).stream()
                .filter(band ->
                        heading.startsWith(new Words(Locale.UK).band(band.width(), band.thickness(), shown) + ":"))
                .mapToDouble(BandTotal::length)
                .sum();
    }

    @Test
    void equalLengthsOfOneYarnAreCutTogether() {
        ClassMember wide = ClassMember.named("Cai")
                .withPosts(Optional.of(ClassMember.OwnPosts.NONE))
                .withWidth(Optional.of(Length.parse("28 cm")));
        ClassSheet sheet = sheet(set(PANEL, ClassMember.named("Asta"), wide, ClassMember.named("")));
        assertThat(lines(sheet))
                .filteredOn(line -> line.whom().startsWith("Stiff band"))
                .extracting(line -> line.count() + " × " + line.length() + " " + line.whom())
                .containsExactly("2 × 222 cm Stiff band, 2 each: Cai", "4 × 195 cm Stiff band, 2 each: Asta, loom 3");
        ClassSheet alike = sheet(set(PANEL, ClassMember.named("Asta"), ClassMember.named("Bo")));
        assertThat(lines(alike))
                .filteredOn(line -> line.whom().startsWith("Stiff band"))
                .extracting(ClassSheet.Line::whom)
                .containsExactly("Stiff band, 2 each: every loom");
    }

    /** A row that names many is divided, each part with its own number of lengths. */
    @Test
    void rowsThatNameManyAreDivided() {
        List<ClassMember> members = new ArrayList<>();
        members.add(ClassMember.named("Odd").withWidth(Optional.of(Length.parse("12 cm"))));
        IntStream.range(0, 30)
                .mapToObj(i -> "Featherstonehaugh-Cholmondeley the " + (i + 1) + "th of that name")
                .forEach(name -> members.add(ClassMember.named(name)));
        ClassSheet sheet = sheet(new ClassSet("", PANEL, List.of(), members));
        assertThat(sheet.title()).isEqualTo("Class");
        List<ClassSheet.Line> stiff = lines(sheet).stream()
                .filter(line ->
                        line.whom().startsWith("Stiff band") && line.length().equals("195 cm"))
                .toList();
        assertThat(stiff).hasSizeGreaterThan(5).allMatch(line -> line.whom().length() <= 240);
        assertThat(stiff.stream().mapToInt(ClassSheet.Line::count).sum()).isEqualTo(60);
        assertThat(stiff.get(0).count()).isEqualTo(2 * stiff.get(0).whom().split(", Feather").length);
    }

    @Test
    void theTableTellsWhatDiffersAndTheHeadWhatIsAlike() {
        ClassMember fenna = ClassMember.named("Fenna")
                .withWidth(Optional.of(Length.parse("18 cm")))
                .withPosts(Optional.of(ClassMember.OwnPosts.NONE));
        ClassSheet sheet = sheet(set(PANEL, ClassMember.named("Asta"), fenna));
        assertThat(sheet.columns())
                .containsExactly("no.", "Name", "Width", "Warp ends", "Posts", "Warp in all", "Finished size");
        assertThat(sheet.looms().get(0)).startsWith("1", "Asta", "24 cm", "72", "2.2 cm, gap 3 cm");
        assertThat(sheet.looms().get(1)).startsWith("2", "Fenna", "18 cm", "54", "none");
        assertThat(sheet.facts())
                .contains(new Fact("Piece", "Worked panel"), new Fact("Sett", "3/cm"), new Fact("Loom", "Pipe loom"));
    }

    @Test
    void shoppingSaysWhatToBuyBesideWhatIsThere() {
        Piece stocked = PANEL.withYarns(PANEL.yarns().stream()
                .map(yarn -> yarn.id().equals("cord") ? yarn.withStock(Optional.of(Length.parse("100 m"))) : yarn)
                .toList());
        ClassSheet sheet = sheet(set(stocked, ClassMember.named("Asta"), ClassMember.named("Bo")));
        assertThat(sheet.shopping().get(0).text())
                .contains("warp, ordering cord")
                .endsWith(", since 100 m are there.");
        assertThat(sheet.findings()).singleElement().asString().startsWith("There isn't enough Cotton cord");
    }

    @Test
    void everythingIsInTheWeaversUnits() {
        Piece inches = PANEL.withHabits(Habits.usual(UnitSystem.INCHES));
        ClassSheet sheet = sheet(set(
                inches,
                ClassMember.named("Asta"),
                ClassMember.named("Bo").withOpen(Optional.of(Length.parse("30 in"))),
                ClassMember.named("Cai").withSett(Optional.of(Sett.parse("6/in")))));
        String all = ClassText.of(sheet, Locale.UK);
        assertThat(all).contains(" in", " yd", " oz").doesNotContain(" cm", " mm", " m,");
    }

    @Test
    void everyMemberHasANameThatNoOtherHas() {
        RandomClasses classes = new RandomClasses(5);
        for (int i = 0; i < Seeds.of(100); i++) {
            ClassSet set = classes.next(12);
            MemberNames names = MemberNames.of(set, Locale.UK);
            List<String> all = IntStream.range(0, 12).mapToObj(names::name).toList();
            assertThat(new HashSet<>(all)).hasSize(12).allMatch(name -> !name.isBlank());
        }
    }

    @Test
    void aMembersSheetBearsItsNameAndLeavesBuyingToTheTeacher() {
        Plan plan = ClassPlan.of(set(PANEL, ClassMember.named("Asta"))).plans().get(0);
        StepSheet sheet = StepSheet.of(plan, "Asta", Locale.UK);
        assertThat(sheet.facts().get(0)).isEqualTo(new Fact("Name", "Asta"));
        assertThat(sheet.yarns())
                .allMatch(line -> line.buy().isEmpty() && line.text().endsWith(")."));
        assertThat(StepSheet.of(plan, "", Locale.UK).facts().get(0).value()).matches("_{20,}");
        assertThat(StepSheet.of(plan, Locale.UK).facts())
                .noneMatch(fact -> fact.name().equals("Name"));
    }

    @Test
    void textLinesStayShort() {
        RandomClasses classes = new RandomClasses(8);
        for (int i = 0; i < Seeds.of(40); i++) {
            String text = ClassText.of(sheet(classes.next()), Locale.UK);
            assertThat(text.lines()).allMatch(line -> line.length() <= 100);
        }
    }
}

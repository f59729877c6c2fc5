package thrumwright.output.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Length;
import thrumwright.output.ClassSheets;
import thrumwright.output.SheetForm;
import thrumwright.output.SheetLook;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.testing.Pieces;

class ClassHtmlTest {
    private static final Pattern PICTURE = Pattern.compile("(?s)<svg role=\"img\".*?</svg>\\n</figure>");
    private static final Pattern USED = Pattern.compile("<g(?: id=\"\\w+\")?>\\n<use href=\"#(\\w+)\"/>\\n</g>");

    private static final Pattern ON_CARD = Pattern.compile("<svg x=[^>]*><use href=\"#(\\w+)\"/></svg>");

    private static ClassSheets written(int looms) {
        return written(IntStream.range(0, looms)
                .mapToObj(i -> ClassMember.named("Loom " + i))
                .toList());
    }

    private static ClassSheets written(List<ClassMember> members) {
        ClassSet set = new ClassSet("Three alike", Pieces.panel(), List.of(), members);
        return new ClassSheets(
                ClassPlan.of(set), new SheetLook(PageSetup.usual(Paper.A4), true), Fonts::load, Locale.UK);
    }

    private static String html(ClassSheets sheets) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        sheets.<IOException>together(
                SheetForm.HTML, "class.html", 150, Progress.UNWATCHED, (name, content) -> content.writeTo(out));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<String> sheets(int looms) throws Exception {
        return List.of(html(written(looms)).split("<section class=\"sheet\">"));
    }

    /** Two of each loom, each printed on a page of its own, drawn with what was drawn for the first. */
    @Test
    void everyLoomHasItsCards() throws Exception {
        List<String> sheets = sheets(3);
        for (String loom : sheets.subList(2, 5)) {
            assertThat(loom.split("<div class=\"card\">", -1)).hasSize(3);
        }
        assertThat(sheets.get(1)).doesNotContain("class=\"card\"");
        assertThat(sheets.get(0)).contains("@page Card{size:210.0mm 297.0mm");
        assertThat(sheets.get(4).length()).isLessThan(sheets.get(2).length() / 2);
    }

    @Test
    void aFileOfOneLoomHasItsOwnCards() throws Exception {
        Map<String, String> files = new TreeMap<>();
        written(2).<IOException>each(SheetForm.HTML, "class.html", 150, Progress.UNWATCHED, (name, content) -> {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            content.writeTo(out);
            files.put(name, out.toString(StandardCharsets.UTF_8));
        });
        assertThat(files).hasSize(3);
        assertThat(List.copyOf(files.values()).subList(1, 3))
                .allMatch(html -> html.split("<div class=\"card\">", -1).length == 3)
                .allMatch(html -> html.contains("@page Card{size:"));
    }

    @Test
    void aLoomThatWeavesTheSameUsesTheDrawingsOfTheFirst() throws Exception {
        List<String> sheets = sheets(3);
        List<String> first = pictures(sheets.get(2));
        List<String> third = pictures(sheets.get(4));
        assertThat(first).filteredOn(picture -> !USED.matcher(picture).find()).hasSizeGreaterThan(10);
        assertThat(third).hasSameSizeAs(first);
        for (int i = 0; i < third.size(); i++) {
            Optional<String> used = USED.matcher(third.get(i))
                    .results()
                    .map(found -> found.group(1))
                    .findFirst();
            assertThat(used).as(third.get(i)).isPresent();
            assertThat(sheets.get(2)).contains("<g id=\"" + used.orElseThrow() + "\">");
        }
    }

    /** Its cloth is wider, but a step is drawn on a few warp ends. */
    @Test
    void aWiderLoomUsesTheDrawingsOfTheSameSteps() throws Exception {
        List<ClassMember> members = List.of(
                ClassMember.named("One"), ClassMember.named("Two").withWidth(Optional.of(Length.parse("30 cm"))));
        List<String> sheets = List.of(html(written(members)).split("<section class=\"sheet\">"));
        List<String> first = pictures(sheets.get(2));
        List<String> second = pictures(sheets.get(3));
        assertThat(second).hasSameSizeAs(first);
        assertThat(second).filteredOn(picture -> USED.matcher(picture).find()).hasSizeGreaterThan(10);
        assertThat(second.get(0)).doesNotContainPattern(USED);
    }

    /** What is said of a step may be the same on two looms, though one weaves it in another colour. */
    @Test
    void aCardIsDrawnWithTheDrawingsOfItsOwnLoom() throws Exception {
        Optional<String> other = Optional.of(Pieces.panel().design().lastYarnId());
        List<ClassMember> members =
                List.of(ClassMember.named("One"), ClassMember.named("Two").withFirstYarn(other));
        List<String> sheets = List.of(html(written(members)).split("<section class=\"sheet\">"));
        for (String loom : sheets.subList(2, 4)) {
            List<String> used =
                    ON_CARD.matcher(loom).results().map(found -> found.group(1)).toList();
            assertThat(used).hasSizeGreaterThan(8);
            assertThat(used).allSatisfy(id -> assertThat(loom).contains("<g id=\"" + id + "\">"));
        }
    }

    private static List<String> pictures(String sheet) {
        return PICTURE.matcher(sheet).results().map(MatchResult::group).toList();
    }
}

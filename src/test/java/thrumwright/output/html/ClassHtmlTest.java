package thrumwright.output.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.page.Progress;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.sheet.WrittenClass;
import thrumwright.testing.Pieces;

class ClassHtmlTest {
    private static final Pattern PICTURE = Pattern.compile("(?s)<svg role=\"img\".*?</svg>\\n</figure>");
    private static final Pattern USED = Pattern.compile("<g id=\"\\w+\">\\n<use href=\"#(\\w+)\"/>\\n</g>");

    private static List<String> sheets(int looms) throws Exception {
        List<ClassMember> members = IntStream.range(0, looms)
                .mapToObj(i -> ClassMember.named("Loom " + i))
                .toList();
        ClassSet set = new ClassSet("Three alike", Pieces.panel(), List.of(), members);
        String html = ClassHtml.of(
                new WrittenClass(ClassPlan.of(set), Locale.UK),
                false,
                Fonts.load(),
                Palette.onPaper(),
                Progress.UNWATCHED);
        return List.of(html.split("<section class=\"sheet\">"));
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

    private static List<String> pictures(String sheet) {
        return PICTURE.matcher(sheet).results().map(MatchResult::group).toList();
    }
}

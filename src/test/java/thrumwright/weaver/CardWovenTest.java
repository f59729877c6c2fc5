package thrumwright.weaver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thrumwright.drawing.Fonts;
import thrumwright.drawing.Palette;
import thrumwright.output.card.CardPages;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.SheetPages;
import thrumwright.plan.Plan;
import thrumwright.sheet.StepSheet;
import thrumwright.testing.RandomPieces;
import thrumwright.testing.Seeds;

/**
 * Sides, sheds, leans and places on the cards are those of the planned cloth: the weaver made of code gets the sentences of the
 * sheet, but row by row what a card's page says, and its cloth must be the planned one.
 */
class CardWovenTest {
    private static final Fonts FONTS = Fonts.load();
    private static final Pattern STEP = Pattern.compile("Step (\\d+): .*");
    private static final Pattern WAY = Pattern.compile("From the (left|right): (.*?)(?=\\. From the |$)");
    private static final Pattern SHEET_STEP = Pattern.compile("☐ (\\d+) .*");
    private static final Pattern SHEET_ROW = Pattern.compile(" {5}☐ (\\d+) [→←] .*");

    @Test
    void whoWeavesByTheCardsGetsTheClothThatWasPlanned() {
        List<String> wrong = new ArrayList<>();
        int rows = 0;
        for (int seed = 0; seed < Seeds.of(500); seed++) {
            Plan plan = Plan.of(CodeWeaverTest.inOurWords(new RandomPieces(2000 + seed).next()));
            Map<Integer, List<String>> told = told(words(plan));
            rows += told.size();
            for (String difference : CodeWeaverTest.differences(plan, byTheCards(plan, told))) {
                wrong.add("Piece " + seed + ": " + difference);
            }
        }
        assertThat(wrong.stream().limit(20).collect(Collectors.joining("\n"))).isEmpty();
        assertThat(rows).isGreaterThan(100);
    }

    /** One wrong word on a card is felt. */
    @Test
    void aWrongWordOnACardIsFelt() {
        for (String[] change : new String[][] {
            {"over the left edge end", "under the left edge end"},
            {"From the left: under", "From the right: under"},
            {"leans /", "leans \\"},
            {"comes up below", "comes up above"}
        }) {
            int felt = 0;
            for (int seed = 0; seed < 15; seed++) {
                Plan plan = Plan.of(CodeWeaverTest.inOurWords(new RandomPieces(2000 + seed).next()));
                String words = words(plan);
                String changed = words.replace(change[0], change[1]);
                if (!told(changed).equals(told(words))) {
                    felt++;
                    assertThat(CodeWeaverTest.differences(plan, byTheCards(plan, told(changed))))
                            .as(change[1])
                            .isNotEmpty();
                }
            }
            assertThat(felt).as(change[0]).isPositive();
        }
    }

    private static String words(Plan plan) {
        SheetPages pages = CardPages.of(
                plan, StepSheet.of(plan, Locale.UK), PageSetup.usual(Paper.A4), FONTS, Palette.onPaper(), Locale.UK);
        StringBuilder words = new StringBuilder();
        for (int page = 0; page < pages.count(); page++) {
            words.append(pages.words(page)).append('\n');
        }
        return words.toString();
    }

    /** For each step how its first row is worked, and its second, as rows of a sheet are told. */
    private static Map<Integer, List<String>> told(String words) {
        Map<Integer, List<String>> told = new HashMap<>();
        int step = 0;
        for (String line : words.lines().toList()) {
            Matcher heading = STEP.matcher(line);
            if (heading.matches()) {
                step = Integer.parseInt(heading.group(1));
            } else if (line.startsWith("From the ")) {
                Matcher way = WAY.matcher(line);
                while (way.find()) {
                    String arrow = way.group(1).equals("left") ? "→ " : "← ";
                    told.computeIfAbsent(step, fresh -> new ArrayList<>()).add(arrow + way.group(2));
                }
            }
        }
        return told;
    }

    /** The sheet with the rows that the cards tell in the place of its own; from the third row on they go by turns. */
    private static String byTheCards(Plan plan, Map<Integer, List<String>> told) {
        List<String> lines = new ArrayList<>();
        int step = 0;
        for (String line : CodeWeaverTest.text(plan).lines().toList()) {
            Matcher heading = SHEET_STEP.matcher(line);
            Matcher row = SHEET_ROW.matcher(line);
            if (heading.matches()) {
                step = Integer.parseInt(heading.group(1));
            }
            if (row.matches()) {
                int number = Integer.parseInt(row.group(1));
                lines.add("     ☐ " + number + " " + told.get(step).get((number - 1) % 2));
            } else {
                lines.add(line);
            }
        }
        return String.join("\n", lines) + "\n";
    }
}

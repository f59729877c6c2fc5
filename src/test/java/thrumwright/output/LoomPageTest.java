package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thrumwright.drawing.Palette;
import thrumwright.output.html.LoomPage;
import thrumwright.plan.Plan;
import thrumwright.plan.StepMeasure;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;

/** The page for a phone or tablet: what it holds, and how it goes in a browser where one is installed. */
class LoomPageTest {
    @TempDir
    Path folder;

    private static Plan plan() throws FileProblem {
        return Plan.of(PieceFile.read(BuiltIn.DEMO.text("first-wave.json")).piece());
    }

    private static String page() throws FileProblem {
        return LoomPage.of(plan(), Palette.onPaper(), Locale.UK);
    }

    @Test
    void itNamesNothingElsewhereAndAllowsNoneOfIt() throws FileProblem {
        assertThat(page())
                .contains("default-src 'none'")
                .doesNotContain("http://", "https://", "url(", "@import", "src=", "unsafe")
                .contains("@media print { body { display: none; } }", "prefers-reduced-motion");
    }

    @Test
    void theSamePieceMakesTheSamePage() throws FileProblem {
        assertThat(page()).isEqualTo(page());
    }

    private Browser browser() throws Exception {
        Optional<Path> program = Browser.installed();
        Assumptions.assumeTrue(program.isPresent(), "no browser is installed here, so the page isn't driven in one");
        return new Browser(program.orElseThrow(), folder.resolve("profile"));
    }

    @Test
    void everyStepIsReachedTicksSurviveAReloadAndNothingLeavesThePage() throws Exception {
        URI file = Files.writeString(folder.resolve("wave.html"), page()).toUri();
        try (Browser browser = browser()) {
            browser.size(390, 844);
            browser.open(file);
            List<String> seen = new ArrayList<>();
            String shown = shown(browser);
            while (!shown.startsWith("All steps are done")) {
                seen.add(shown);
                browser.run("document.getElementById('done').click()");
                if (seen.size() % 7 == 0) {
                    String before = stands(browser);
                    browser.open(file);
                    assertThat(stands(browser)).isEqualTo(before);
                }
                shown = shown(browser);
                assertThat(seen).hasSizeLessThan(500);
            }
            for (LoomStep step : LoomSheet.of(plan(), Locale.UK).steps()) {
                String all = String.join(" ", seen);
                assertThat(all).contains(step.step().title());
                step.told().forEach(sentence -> assertThat(all).contains(sentence));
                step.rows().forEach(row -> assertThat(all).contains(row.counted(), row.said()));
            }
            browser.run("document.getElementById('back').click()");
            assertThat(shown(browser)).contains("Next: nothing, it is the last step");
            assertThat(browser.told("Network.requestWillBeSent"))
                    .isNotEmpty()
                    .allMatch(request -> request.contains("\"url\":\"file:///"));
            assertThat(browser.told("Runtime.exceptionThrown")).isEmpty();
            assertThat(browser.told("Log.entryAdded")).isEmpty();
        }
    }

    /** Which step is shown, and all that is ticked. */
    private static String stands(Browser browser) throws Exception {
        return browser.run("document.querySelector('section:not([hidden])').dataset.key"
                + " + localStorage.getItem(document.querySelector('main').dataset.piece)");
    }

    private static String shown(Browser browser) throws Exception {
        return browser.run("document.querySelector('main').innerText.replace(/\\s+/g, ' ')")
                .replaceFirst("^The (?:start|top|design) |^Off the loom ", "")
                .strip();
    }

    /** By hand: what came 3 mm higher than planned brings all that follows in the start 3 mm higher. */
    @Test
    void whatIsMeasuredIsTypedHereAndItsConsequenceIsSaidAtOnce() throws Exception {
        URI file = Files.writeString(folder.resolve("wave.html"), page()).toUri();
        try (Browser browser = browser()) {
            browser.size(390, 844);
            browser.open(file);
            while (browser.run("document.getElementById('measure').hidden").equals("true")) {
                browser.run("document.getElementById('done').click()");
            }
            browser.run("document.querySelector('summary').click()");
            String step = browser.run("(window.step = [...document.querySelectorAll('section[data-reach]')]"
                    + ".find(s => s.dataset.key === document.getElementById('measure').dataset.step),"
                    + " step.dataset.key)");
            assertThat(browser.run("document.querySelector('summary').textContent"))
                    .isEqualTo("What you measured: " + browser.run("step.querySelector('h1').textContent"));
            double planned = Double.parseDouble(browser.run("step.dataset.reach"));
            assertThat(StepMeasure.of(plan(), step).reach()).as(step).isPresent();
            assertThat(StepMeasure.of(plan(), step).reach().orElseThrow()).isCloseTo(planned, within(0.01));
            assertThat(typed(browser, "height", Math.round(planned) + 3 + " mm"))
                    .contains("it came 3 mm higher");
            assertThat(typed(browser, "height", "tall")).contains("“tall” is no length above 0");
            assertThat(typed(browser, "height", Math.round(planned) + 3 + "mm")).contains("3 mm higher");
            double wide = Double.parseDouble(browser.run("step.dataset.width"));
            assertThat(typed(browser, "width", String.valueOf((wide - 8) / 10))).contains("8 mm narrower than planned");
            String next = "[...document.querySelectorAll('section[data-part=start]')]"
                    + ".filter(s => s !== step).map(s => s.querySelector('.reach').textContent).join('|')";
            assertThat(browser.run(next)).contains("As measured before: to ");
            browser.run("document.getElementById('height').dispatchEvent(new KeyboardEvent('keydown',"
                    + " {key: ' ', bubbles: true}))");
            String stands = stands(browser);
            browser.open(file);
            assertThat(stands(browser)).as("a space in a field ticks nothing").isEqualTo(stands);
            assertThat(browser.run("document.getElementById('height').value"))
                    .isEqualTo(Math.round(planned) + 3 + "mm");
            assertThat(browser.run("document.querySelector('aside div').textContent"))
                    .contains("3 mm higher");
            assertThat(browser.told("Runtime.exceptionThrown")).isEmpty();
        }
    }

    private static String typed(Browser browser, String field, String text) throws Exception {
        return browser.run("(() => { const field = document.getElementById('" + field + "'); field.value = '" + text
                + "'; field.dispatchEvent(new Event('input', {bubbles: true}));"
                + " return document.querySelector('aside div').textContent; })()");
    }

    /** A finger needs 12 mm; phones have about 160 CSS pixels to the inch (from memory), so 76 of them. */
    @Test
    void targetsAreLargeAndWordsStandOutOnBothScreensInLightAndDark() throws Exception {
        URI file = Files.writeString(folder.resolve("wave.html"), page()).toUri();
        try (Browser browser = browser()) {
            for (int[] size : new int[][] {{390, 844}, {820, 1180}}) {
                for (String scheme : List.of("light", "dark")) {
                    browser.size(size[0], size[1]);
                    browser.send(
                            "Emulation.setEmulatedMedia",
                            "{\"features\":[{\"name\":\"prefers-color-scheme\",\"value\":\"" + scheme + "\"}]}");
                    browser.open(file);
                    browser.run("document.getElementById('done').click()");
                    browser.run("document.querySelector('details').open = true");
                    assertThat(browser.run("document.documentElement.scrollWidth"))
                            .isEqualTo(String.valueOf(size[0]));
                    assertThat(
                                    Double.parseDouble(
                                            browser.run(
                                                    "Math.min(...[...document.querySelectorAll('button,summary,input')].filter(b => b.offsetParent)"
                                                            + ".map(b => b.getBoundingClientRect()).flatMap(r => [r.width, r.height]))")))
                            .isGreaterThanOrEqualTo(76);
                    assertThat(Double.parseDouble(browser.run(CONTRAST))).isGreaterThanOrEqualTo(7);
                }
            }
        }
    }

    /** The least contrast of what is shown, as WCAG 2 defines it. */
    private static final String CONTRAST =
            "Math.min(...[...document.querySelectorAll('h1,p,li,span,button,summary,label')]"
                    + ".filter(e => e.offsetParent && e.textContent.trim()).map(e => {"
                    + " const lum = c => { const v = c.match(/[\\d.]+/g).slice(0, 3).map(x => x / 255)"
                    + ".map(x => x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4);"
                    + " return 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2]; };"
                    + " let b = e; while (getComputedStyle(b).backgroundColor === 'rgba(0, 0, 0, 0)') b = b.parentElement;"
                    + " const one = lum(getComputedStyle(e).color), two = lum(getComputedStyle(b).backgroundColor);"
                    + " return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05); }))";

    /** Where somebody asks for no motion, a row is seen whole and still. */
    @Test
    void picturesStandStillWhereNoMotionIsAskedFor() throws Exception {
        URI file = Files.writeString(folder.resolve("wave.html"), page()).toUri();
        try (Browser browser = browser()) {
            browser.send(
                    "Emulation.setEmulatedMedia",
                    "{\"features\":[{\"name\":\"prefers-reduced-motion\",\"value\":\"reduce\"}]}");
            browser.open(file);
            String picture = "[...document.querySelectorAll('section:not([hidden]) g[data-from]')]"
                    + ".map(g => g.getAttribute('visibility') + g.firstChild.getAttribute('stroke-dashoffset')).join()";
            String before = browser.run(picture);
            Thread.sleep(400);
            assertThat(browser.run(picture)).isEqualTo(before).contains("visible0");
            browser.run("document.getElementById('crossing').click()");
            assertThat(browser.run(picture)).isNotEqualTo(before);
        }
    }
}

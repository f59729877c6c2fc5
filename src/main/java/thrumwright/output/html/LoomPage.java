package thrumwright.output.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.drawing.Palette;
import thrumwright.drawing.step.Move;
import thrumwright.measure.Phrases;
import thrumwright.output.page.Markup;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Plan;
import thrumwright.sheet.AtLoom;
import thrumwright.sheet.LoomSheet;
import thrumwright.sheet.LoomStep;
import thrumwright.sheet.Step;

/**
 * The steps as one page for a phone or a tablet beside the loom: large, one row at a time, its ticks and what is
 * measured kept by the browser. It
 * needs no network and asks for none, and the browser is told to allow none. Without its script it is a plain list.
 */
public final class LoomPage {
    private final LoomSheet sheet;
    private final Palette palette;
    private final Phrases phrases;
    private final Html html = new Html();

    private LoomPage(Plan plan, Palette palette, Locale locale) {
        this.sheet = LoomSheet.of(plan, locale);
        this.palette = palette;
        this.phrases = Phrases.of("thrumwright.sheet.loom", locale);
    }

    /** The whole page; the same piece makes the same text. */
    public static String of(Plan plan, Palette palette, Locale locale) {
        LoomPage page = new LoomPage(plan, palette, locale);
        page.write();
        return page.html.toString();
    }

    private void write() {
        String style = resource("loom.css");
        String script = resource("loom.js");
        String title = sheet.plan().piece().title();
        html.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src '" + hash(style)
                + "'; script-src '" + hash(script) + "'; base-uri 'none'; form-action 'none'\"/>\n");
        html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        html.line("title", title);
        html.raw("<style>" + style + "</style>\n</head>\n<body>\n<main data-piece=\"" + Markup.escaped(name(title))
                + "\">\n");
        for (int i = 0; i < sheet.steps().size(); i++) {
            step(i);
        }
        html.raw("<section class=\"step done\">\n");
        html.line("h1", phrases.say("done.title"));
        html.line("p", phrases.say("done.text"));
        html.raw("</section>\n");
        html.raw("</main>\n");
        new LoomMeasures(sheet.plan(), phrases, html).panel();
        buttons();
        html.raw("<script>" + script + "</script>\n</body>\n</html>\n");
    }

    /** By what its ticks are kept: another piece, or one with other steps, has its own. */
    private String name(String title) {
        StringBuilder steps = new StringBuilder(title);
        sheet.steps()
                .forEach(step ->
                        steps.append('\n').append(step.step().key()).append(' ').append(step.count()));
        return "thrumwright " + hash(steps.toString());
    }

    private void step(int index) {
        LoomStep step = sheet.steps().get(index);
        html.raw("<section class=\"step\" data-key=\""
                + Markup.escaped(step.step().key()) + "\" data-count=\"" + step.count() + "\"");
        html.raw(new LoomMeasures(sheet.plan(), phrases, html).of(step.step().key()) + ">\n");
        html.line("p", "part", step.part());
        html.within("div", "words", () -> step.opening().forEach(sentence -> html.line("p", sentence)));
        html.line("h1", step.title());
        picture(step.step()).ifPresent(html::raw);
        html.within("div", "words", () -> {
            step.step().sentences().forEach(sentence -> html.line("p", sentence));
            step.step().cautions().forEach(caution -> html.line("p", "careful", caution));
        });
        html.within("ul", "cuts", () -> step.cuts().forEach(cut -> html.line("li", cut)));
        html.within("ol", "rows", () -> rows(index, step));
        html.line("p", "reach", step.reach());
        html.line("p", "next", sheet.next(new AtLoom(index, step.count() - 1), phrases));
        html.raw("</section>\n");
    }

    private void rows(int index, LoomStep step) {
        for (int row = 0; row < step.rows().size(); row++) {
            LoomStep.LoomRow one = step.rows().get(row);
            String next = sheet.next(new AtLoom(index, row), phrases);
            html.within("li", "", () -> {
                html.line("span", "count", one.counted());
                html.line("span", "row", one.said());
                html.line("span", "next", next);
            });
        }
    }

    private Optional<String> picture(Step step) {
        return step.picture().filter(shown -> !step.rows().isEmpty()).flatMap(shown -> {
            EndPlan end = sheet.plan().end(shown.place());
            return end.block(shown.blockId())
                    .flatMap(block -> Move.of(sheet.plan(), end, block))
                    .map(move -> new MoveSvg(move, palette).text(shown.says()));
        });
    }

    private void buttons() {
        html.within("nav", "", () -> {
            for (String id : List.of("slower", "move", "crossing", "faster", "back", "done")) {
                html.raw("<button type=\"button\" id=\"" + id + "\">" + Markup.escaped(phrases.say("button." + id))
                        + "</button>\n");
            }
        });
    }

    private static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = LoomPage.class.getResourceAsStream("/thrumwright/output/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

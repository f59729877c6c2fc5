package thrumwright.output.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import thrumwright.output.page.Markup;

/**
 * What stands around a page's content. A browser is told to ask nothing of anybody and to run nothing but the few lines that
 * keep the ticks; without them, boxes can be ticked all the same.
 */
final class HtmlFrame {
    private HtmlFrame() {}

    /**
     * All that stands before the content of a page.
     *
     * @param mark by which its ticks are kept: another plan begins without any
     */
    static void begin(Html html, String title, String mark) {
        begin(html, title, mark, "");
    }

    /** The same with further rules of style. */
    static void begin(Html html, String title, String mark, String style) {
        html.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                + "style-src 'unsafe-inline'; script-src 'sha256-" + sum(ticks()) + "'\"/>\n");
        html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        html.line("title", title);
        html.raw("<style>\n" + resource("sheet.css") + style + "</style>\n</head>\n<body>\n");
        html.raw("<main data-ticks=\"" + Markup.escaped(title + " " + mark) + "\">\n");
    }

    /** All that stands after it. */
    static void end(Html html) {
        html.raw("</main>\n<script>" + ticks() + "</script>\n</body>\n</html>\n");
    }

    private static String ticks() {
        return resource("ticks.js");
    }

    private static String resource(String name) {
        try (InputStream in = HtmlFrame.class.getResourceAsStream("/thrumwright/output/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sum(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(sum);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

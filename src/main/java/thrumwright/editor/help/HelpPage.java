package thrumwright.editor.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.ImageIcon;
import thrumwright.editor.look.Pixels;

/**
 * One of the docs' pages.
 *
 * @param file within the docs, such as {@code howto/fringe.md}
 */
public record HelpPage(String file) {
    /** What the program begins with, and where all others are linked. */
    public static final HelpPage CONTENTS = new HelpPage("help.md");

    private static final String FOLDER = "/thrumwright/help/";
    private static final Pattern LINK = Pattern.compile("\\]\\(([^):#\\s]+)");

    /** All pages, as the contents name them. */
    public static List<HelpPage> all() {
        List<HelpPage> pages = new ArrayList<>(List.of(CONTENTS));
        Matcher link = LINK.matcher(CONTENTS.text());
        while (link.find()) {
            CONTENTS.linked(link.group(1)).filter(page -> !pages.contains(page)).ifPresent(pages::add);
        }
        return pages;
    }

    /** Where it lies in the program; empty if no such page travels along. */
    public Optional<URL> place() {
        return Optional.ofNullable(HelpPage.class.getResource(FOLDER + file));
    }

    /** Its first heading. */
    public String title() {
        return text().lines()
                .filter(line -> line.startsWith("# "))
                .findFirst()
                .map(line -> line.substring(2))
                .orElse(file);
    }

    /**
     * All of it.
     *
     * @param widest how wide its pictures may be, pixels
     */
    public String html(int widest) {
        return "<html><body>" + Markdown.html(text(), picture -> size(picture, widest)) + "</body></html>";
    }

    private String text() {
        try (InputStream in = HelpPage.class.getResourceAsStream(FOLDER + file)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page that a link on this one leads to. */
    public Optional<HelpPage> linked(String link) {
        URI there = URI.create("/" + file).resolve(link);
        return there.isAbsolute() || !there.getPath().endsWith(".md")
                ? Optional.empty()
                : Optional.of(new HelpPage(there.getPath().substring(1)))
                        .filter(page -> page.place().isPresent());
    }

    /** A picture is as much larger as all else is on this screen, but no wider than there is room. */
    private String size(String picture, int widest) {
        String path = URI.create("/" + file).resolve(picture).getPath();
        URL there = HelpPage.class.getResource(FOLDER + path.substring(1));
        if (there == null) {
            return "";
        }
        ImageIcon image = new ImageIcon(there);
        double share = Math.min(Pixels.of(1), (double) widest / image.getIconWidth());
        return "width=\"" + Math.round(image.getIconWidth() * share) + "\" height=\""
                + Math.round(image.getIconHeight() * share) + "\"";
    }
}

package thrumwright.output;

import java.util.Locale;
import java.util.Optional;

/** The forms in which a step sheet can be written. */
public enum SheetForm {
    PDF(".pdf", false),
    PNG(".png", true),
    SVG(".svg", true),
    HTML(".html", false),
    TEXT(".txt", false);

    private final String ending;
    private final boolean paged;

    SheetForm(String ending, boolean paged) {
        this.ending = ending;
        this.paged = paged;
    }

    /** The ending of its files, such as {@code .pdf}. */
    public String ending() {
        return ending;
    }

    /** Whether every page is a file of its own. */
    public boolean paged() {
        return paged;
    }

    /** Whether it consists of pages that are laid out. */
    public boolean onPages() {
        return paged || this == PDF;
    }

    /** Whether a file's name has the ending of this form. */
    public boolean names(String file) {
        return file.toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /** The form that a file's name asks for by its ending; empty if it asks for none of them. */
    public static Optional<SheetForm> named(String file) {
        for (SheetForm form : values()) {
            if (form.names(file)) {
                return Optional.of(form);
            }
        }
        return Optional.empty();
    }

    /**
     * The name of the file that holds a page.
     *
     * @param name chosen for the whole sheet, with or without the ending
     * @param page from 0
     */
    public String pageName(String name, int page) {
        return stem(name) + "-" + (page + 1) + ending;
    }

    /** A name without the ending, if it had it. */
    String stem(String name) {
        return names(name) ? name.substring(0, name.length() - ending.length()) : name;
    }
}

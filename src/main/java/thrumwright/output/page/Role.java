package thrumwright.output.page;

/** What a stretch of a page is: by its standard structure type of ISO 32000-1, 14.8.4. */
public enum Role {
    TITLE("H1"),
    CHAPTER("H2"),
    STEP("H3"),
    TEXT("P"),
    FIGURE("Figure"),
    LABEL("Lbl"),
    ENTRY("LBody"),
    HEAD("TH"),
    CELL("TD"),
    /** Seen only: rules, running titles, page numbers. */
    ORNAMENT("Artifact"),
    /** One of several sheets in a file. */
    SHEET("Part"),
    LIST("L"),
    ITEM("LI"),
    TABLE("Table"),
    ROW("TR"),
    /** All that is read. */
    DOCUMENT("Document");

    private final String type;

    Role(String type) {
        this.type = type;
    }

    public String type() {
        return type;
    }

    /** Whether it holds other roles instead of text or a drawing. */
    public boolean holdsOthers() {
        return compareTo(SHEET) >= 0;
    }

    /** Whether two that follow each other are one: a list goes on over several parts and pages. */
    public boolean goesOn() {
        return this == LIST || this == TABLE;
    }
}

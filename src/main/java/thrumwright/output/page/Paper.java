package thrumwright.output.page;

/** Paper sizes: A4 and A3 by ISO 216, Letter and Tabloid by ANSI. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4),
    A3(297, 420),
    TABLOID(279.4, 431.8);

    /** Points in a millimetre. */
    public static final double POINTS = 72 / 25.4;

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In points, more than 0. */
    public double width() {
        return width * POINTS;
    }

    /** In points, more than 0. */
    public double height() {
        return height * POINTS;
    }
}

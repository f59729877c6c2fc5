package thrumwright.measure;

/** The units in which a piece is shown. What the user types may be in any unit all the same. */
public enum UnitSystem {
    METRIC(Unit.CENTIMETRE, 3000),
    INCHES(Unit.INCH, 72 * 25.4);

    private final Unit usual;
    private final double longFrom;

    UnitSystem(Unit usual, double longFrom) {
        this.usual = usual;
        this.longFrom = longFrom;
    }

    /** The unit of a number typed without one. */
    public Unit usual() {
        return usual;
    }

    /** The unit of a yarn's thickness typed without one. */
    public Unit fine() {
        return this == INCHES ? Unit.INCH : Unit.MILLIMETRE;
    }

    /**
     * A usual length, mm, as a rule of these units shows it.
     *
     * @param mm in metric units, any
     * @param inches in inches, any
     */
    public double length(double mm, double inches) {
        return this == INCHES ? inches * Unit.INCH.millimetres() : mm;
    }

    /** From this length on, in mm, a cut is shown to whole centimetres or inches. */
    double longFrom() {
        return longFrom;
    }
}

package thrumwright.yarn;

/**
 * What a yarn is made of. Densities in g/cm³ from the table of fibre densities in <i>Physical Properties of Textile
 * Fibres</i>.
 */
public enum Fibre {
    COTTON(1.52),
    WOOL(1.31),
    SILK(1.34),
    LINEN(1.53);

    private final double density;

    Fibre(double density) {
        this.density = density;
    }

    /** In g/cm³, 1.31 to 1.53. */
    public double density() {
        return density;
    }
}

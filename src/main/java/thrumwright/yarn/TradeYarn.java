package thrumwright.yarn;

/**
 * Yarns for warp and weft by the names under which the trade sells them everywhere, without a maker (common practice, no
 * source). Their numbers are counts, so that thickness and weight follow from {@link CountSystem}.
 */
public enum TradeYarn {
    SEINE_TWINE_12_6(Fibre.COTTON, "12/6 Ne", Firmness.HARD),
    SEINE_TWINE_12_9(Fibre.COTTON, "12/9 Ne", Firmness.HARD),
    SEINE_TWINE_12_12(Fibre.COTTON, "12/12 Ne", Firmness.HARD),
    SEINE_TWINE_12_15(Fibre.COTTON, "12/15 Ne", Firmness.HARD),
    RUG_WARP_8_4(Fibre.COTTON, "8/4 Ne", Firmness.HARD),
    COTTON_8_2(Fibre.COTTON, "8/2 Ne", Firmness.HARD),
    LINEN_8_2(Fibre.LINEN, "8/2 lea", Firmness.HARD),
    LINEN_RUG_WARP_8_5(Fibre.LINEN, "8/5 lea", Firmness.HARD),
    TAPESTRY_WOOL_7_2(Fibre.WOOL, "7/2 Nm", Firmness.SOFT),
    WOOL_6_2(Fibre.WOOL, "6/2 Nm", Firmness.SOFT),
    WOOL_6_1(Fibre.WOOL, "6 Nm", Firmness.SOFT),
    WORSTED_20_2(Fibre.WOOL, "20/2 worsted", Firmness.SOFT);

    private static final int UNDYED_COTTON = 0xe9e1cf;
    private static final int RAW_LINEN = 0xcdbf9f;
    private static final int ECRU_WOOL = 0xe6dcc6;

    private final Fibre fibre;
    private final String thickness;
    private final Firmness firmness;

    TradeYarn(Fibre fibre, String thickness, Firmness firmness) {
        this.fibre = fibre;
        this.thickness = thickness;
        this.firmness = firmness;
    }

    /** As it comes, undyed. */
    public Yarn yarn(String id, String name) {
        int colour = switch (fibre) {
            case COTTON -> UNDYED_COTTON;
            case LINEN -> RAW_LINEN;
            case WOOL, SILK -> ECRU_WOOL;
        };
        return new Yarn(id, name, new Colour(colour), fibre, Thickness.parse(thickness), firmness);
    }
}

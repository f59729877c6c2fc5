package thrumwright.testing;

/**
 * How many random cases a test does. What is written in a test is what a long run does ({@code -Dthrumwright.seeds=100},
 * as {@code .ci/run}); other runs do a share of it, in percent.
 */
public final class Seeds {
    /** Share of the cases, percent. */
    private static final int SHARE = Integer.getInteger("thrumwright.seeds", 4);

    private static final int USUAL = 10;

    private Seeds() {}

    /**
     * How many to do.
     *
     * @param many in a long run
     * @return at least one
     */
    public static int of(int many) {
        return of(many, 1);
    }

    /**
     * How many to do where fewer would not meet everything that the test looks for.
     *
     * @param many in a long run
     * @param least in any run
     */
    public static int of(int many, int least) {
        return Math.max(least, Math.round(many * SHARE / 100f));
    }

    /**
     * How many to do where each takes as long as a whole test.
     *
     * @param many in a long run
     * @param few in any usual run
     */
    public static int costly(int many, int few) {
        return SHARE > USUAL ? of(many, few) : few;
    }
}

package thrumwright.block;

/** Which way the stitches of a row lean in front, like the middle stroke of the letter: S is \, Z is /. */
public enum Lean {
    S,
    Z;

    public Lean other() {
        return this == S ? Z : S;
    }
}

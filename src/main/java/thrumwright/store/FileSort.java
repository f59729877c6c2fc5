package thrumwright.store;

/** What sort of document a text is, by what stands in it; the one place that decides. */
public enum FileSort {
    PIECE,
    CLASS,
    STRUCTURE;

    /** What a text sets out to be; it may be damaged all the same. What is neither class nor structure is read as a piece. */
    public static FileSort of(String text) {
        if (StructureFile.isMeant(text)) {
            return STRUCTURE;
        }
        return ClassFile.isClass(text) ? CLASS : PIECE;
    }
}

package thrumwright.output.page;

/** Several sheets for one file, each laid out only when its turn comes. */
public interface SheetSource {
    int count();

    /**
     * Lays one sheet out.
     *
     * @param index from 0
     */
    SheetPages sheet(int index);
}

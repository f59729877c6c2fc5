package thrumwright.sheet;

/**
 * Where the work stands at the loom.
 *
 * @param step which step, from 0
 * @param row which of its rows, from 0
 */
public record AtLoom(int step, int row) {}

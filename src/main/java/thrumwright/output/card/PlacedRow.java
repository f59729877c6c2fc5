package thrumwright.output.card;

import java.awt.geom.Rectangle2D;

/**
 * A row in its place.
 *
 * @param row which of its end, from 0 for the lowest
 */
record PlacedRow(int row, Rectangle2D box) {}

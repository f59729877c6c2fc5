package thrumwright.plan;

import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;

/**
 * A board covered with cloth to which the piece is sewn. All in mm.
 *
 * @param border by how much it is larger than the piece on every side, 0 or more; 0: it hides behind the piece
 * @param width of the board
 * @param height of the board
 * @param turnover by how much its cover is larger on every side
 */
public record MountingBoard(double border, double width, double height, double turnover) {
    /**
     * A board that hides is smaller than the piece by so much each way, in inches a quarter: ‘if my tapestry is 10 x 10 inches my
     * mount will be 9.75 x 9.75’ (‘Mounting: Small Work’, burns-studio.com).
     */
    static final double HIDDEN = 6;

    /** The usual border (common practice, no source; ‘a 2″ margin all around’: M. Elkind, ‘Mounting small textiles’, 2016). */
    private static final double USUAL = 25;

    /** What is turned to the back of the board and laced there, mm (common practice, no source). */
    private static final double TURNOVER = 50;

    /**
     * @param width finished, mm
     * @param height finished, mm
     */
    static MountingBoard of(Piece piece, double width, double height) {
        UnitSystem units = piece.habits().units();
        Optional<Length> typed = piece.destiny().border();
        double border = typed.map(Length::mm).orElse(units.length(USUAL, 1));
        double more = border > 0 ? 2 * border : -Math.min(units.length(HIDDEN, 1.0 / 4), Math.min(width, height) / 2);
        return new MountingBoard(border, width + more, height + more, units.length(TURNOVER, 2));
    }

    /** Whether it can't be seen from the front. */
    public boolean hides() {
        return border == 0;
    }

    /** Width of its cover before it is turned over, mm, more than 0. */
    public double coverWidth() {
        return width + 2 * turnover;
    }

    /** Height of its cover before it is turned over, mm, more than 0. */
    public double coverHeight() {
        return height + 2 * turnover;
    }
}

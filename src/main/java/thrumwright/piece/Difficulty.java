package thrumwright.piece;

/** How much a structure asks of the hands. */
public enum Difficulty {
    /** For somebody who has never woven. */
    FIRST_PIECE,
    /** For somebody who has woven a few pieces. */
    SOME_PRACTICE,
    /** Slow, fine or many of the same: nothing that patience wouldn't do. */
    PATIENT_HANDS
}

package thrumwright.sheet.card;

/**
 * Something that a card says.
 *
 * @param shown as it is written, with signs
 * @param says the same without signs, for those who hear it
 */
public record CardSaying(String shown, String says) {
    /** What is written as it is said. */
    static CardSaying plain(String words) {
        return new CardSaying(words, words);
    }
}

package thrumwright.sheet.card;

/**
 * What a sign or a short word on a card means.
 *
 * @param sign as it is written on the card
 */
public record CardKey(String sign, String meaning) {}

/** The card of an end in words: a row for each block, as the eye wants it that looks up from the weaving. */
package thrumwright.sheet.card;

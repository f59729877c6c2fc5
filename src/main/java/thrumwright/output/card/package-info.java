/** Cards that hang by the loom: their sizes, their rows, the stack beside them, and how they go on from card to card. */
package thrumwright.output.card;

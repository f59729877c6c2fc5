/** The picture of a whole piece or of one end, and the marks that lie over it. */
package thrumwright.drawing.piece;

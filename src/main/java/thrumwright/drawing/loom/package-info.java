/** Looms as they are warped, seen from the side or from the front. */
package thrumwright.drawing.loom;

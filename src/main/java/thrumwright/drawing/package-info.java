/**
 * Painters for screen, print, PDF and PNG alike. A picture is made from the same strands that give the lengths: each is
 * cut where it passes from the front of the warp to the back, and what lies behind is painted first, then the warp, then
 * what lies in front, in the order of working. Painters know no component; a {@link thrumwright.drawing.View} turns
 * millimetres into the units of the page or the screen.
 */
package thrumwright.drawing;

/** What becomes of the warp ends at an edge: fringes, knots, tassels, turned ends and loops. */
package thrumwright.drawing.edge;

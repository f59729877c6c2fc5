/**
 * Everything that is computed from a piece: rows, heights, cuts, hems, the warp budget and totals. A plan is
 * derived and never stored. All in millimetres and grams.
 */
package thrumwright.plan;

/** What follows from the piece, beside the canvas: findings, cuts, hems, the warp budget, the steps. */
package thrumwright.editor.view;

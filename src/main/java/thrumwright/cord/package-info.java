/**
 * The taut cord led round pegs. One idea carries every length in the program: a yarn in the cloth is a taut cord, and
 * every structure is an order in which the cord visits the pegs and the sense in which it turns round each. Seen from
 * above: x along the width, z towards the weaver, y (the climb) up the warp. All in millimetres and radians.
 */
package thrumwright.cord;

/** Yarns and cords: how thick, how firm, how heavy. */
package thrumwright.yarn;

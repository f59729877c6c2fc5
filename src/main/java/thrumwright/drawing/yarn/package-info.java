/** Yarn in the cloth: strands cut where they pass the plane of the warp, and the pens that draw them. */
package thrumwright.drawing.yarn;

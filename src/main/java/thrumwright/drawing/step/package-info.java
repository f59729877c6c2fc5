/** One step at a time, large, right and wrong. */
package thrumwright.drawing.step;

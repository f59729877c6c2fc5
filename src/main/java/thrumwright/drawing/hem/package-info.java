/** Hems from the side, their folds, corners and sleeves. */
package thrumwright.drawing.hem;

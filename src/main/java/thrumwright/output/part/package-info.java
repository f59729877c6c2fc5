/** The parts that a sheet is set from. */
package thrumwright.output.part;

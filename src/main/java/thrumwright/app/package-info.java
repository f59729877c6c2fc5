/** Starting the program: which part of it the user asked for. */
package thrumwright.app;

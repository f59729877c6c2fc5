/** The program without its window: data to the standard output, messages to the standard error. */
package thrumwright.commandline;

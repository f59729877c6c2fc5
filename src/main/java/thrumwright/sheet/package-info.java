/** The step sheet in order and in words, without any layout: what to cut, what to do, what to watch. */
package thrumwright.sheet;

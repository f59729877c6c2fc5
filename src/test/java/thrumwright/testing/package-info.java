/** What the window tests stand on: a screen, a robot at the keyboard, and a picture of whatever went wrong. */
package thrumwright.testing;

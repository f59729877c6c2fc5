/**
 * What several tests share: worked examples, and for the window tests a screen, a robot at the keyboard and a picture of
 * whatever went wrong.
 */
package thrumwright.testing;

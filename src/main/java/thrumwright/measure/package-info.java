/** Lengths, setts and the ways in which a weaver writes them. Everything is in millimetres inside. */
package thrumwright.measure;

/**
 * Pieces and structures on file: one JSON document each, lengths as they were typed, unknown fields kept. The only
 * package that knows JSON.
 */
package thrumwright.store;

/** The document: one immutable piece with its loom, warp, yarns, design and two ends. */
package thrumwright.piece;

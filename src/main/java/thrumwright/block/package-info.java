/**
 * The blocks of which an end is stacked. Each gives the order in which its yarn visits the warp ends; its length in
 * closed form, its height and its picture follow from that. All in millimetres.
 */
package thrumwright.block;

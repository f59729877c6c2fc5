/**
 * Painters for screen, print, PDF and PNG alike. They know no component and no file, only a {@link java.awt.Graphics2D};
 * a {@link thrumwright.drawing.View} turns millimetres into the units of the page or the screen, and a
 * {@link thrumwright.drawing.Palette} says what the colours are.
 *
 * <p>A picture is made from the same strands that give the lengths. {@code Stretches} cuts each strand where it passes
 * the plane of the warp: what lies behind is painted first, then the warp, then what lies in front, in the order of
 * working. No kind of block has a drawing of its own. A {@link thrumwright.drawing.piece.PiecePicture} keeps the stretches of
 * all blocks, so that painting again costs only the painting; blocks that haven't changed hand theirs on to the picture
 * of the next plan.
 *
 * <p>From the small to the large: {@code Stretch} is a piece of yarn in mm, {@code Spine} its middle line on the page,
 * {@code YarnOutline} and {@code PlyMarks} what is filled and stroked there; {@code YarnPen}, {@code WarpPen} and
 * {@code PostPen} draw cords and posts, {@code ClothPainter} blocks on their warp, {@code Marks} what lies over them.
 * Four painters are for others to use:
 *
 * <ul>
 *   <li>{@link thrumwright.drawing.piece.PiecePainter}: a whole piece or one end, from the front or from behind;
 *   <li>{@link thrumwright.drawing.step.StepPainter}: one step, large, to learn from;
 *   <li>{@link thrumwright.drawing.step.StagePicture}: one stage of how a block is worked, with the hand's way and its words;
 *   <li>{@link thrumwright.drawing.hem.HemPicture}: a hem from the side, as {@code FoldPainter} draws it, with measures and names.
 * </ul>
 *
 * {@link thrumwright.drawing.Spread} keeps labels from covering each other.
 */
package thrumwright.drawing;

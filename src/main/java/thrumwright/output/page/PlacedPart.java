package thrumwright.output.page;

/** Where a part lies on its page, in points from the upper left corner. */
public record PlacedPart(Part part, double x, double y, double width, double height) {}

package thrumwright.sheet;

/** A named value in the sheet's head. */
public record Fact(String name, String value) {}

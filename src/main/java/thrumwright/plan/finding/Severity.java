package thrumwright.plan.finding;

/** How much a finding matters. */
public enum Severity {
    /** It won't work so. */
    PROBLEM,
    /** It will work, but not well. */
    CAUTION,
    /** Good to know. */
    NOTE
}

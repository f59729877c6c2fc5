package thrumwright.output.page;

import java.time.ZonedDateTime;

/**
 * What tells an old print from a new one.
 *
 * @param written when
 * @param says date and mark, for the foot of every page
 */
public record Imprint(ZonedDateTime written, String says) {}

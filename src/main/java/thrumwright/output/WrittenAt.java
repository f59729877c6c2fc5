package thrumwright.output;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/** When files say that they were written. Asked where the program begins to write, and handed on from there. */
public final class WrittenAt {
    private WrittenAt() {}

    /** Now, in whole seconds; or where the environment says so, then (reproducible-builds.org, SOURCE_DATE_EPOCH). */
    public static ZonedDateTime now() {
        return now(System.getenv("SOURCE_DATE_EPOCH"));
    }

    /** @param epoch seconds since 1970; what is no such number is as if it weren't there */
    static ZonedDateTime now(String epoch) {
        if (epoch != null && epoch.matches("\\d{1,11}")) {
            return Instant.ofEpochSecond(Long.parseLong(epoch)).atZone(ZoneOffset.UTC);
        }
        return ZonedDateTime.now().truncatedTo(ChronoUnit.SECONDS);
    }
}

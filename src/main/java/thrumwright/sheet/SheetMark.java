package thrumwright.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.measure.Phrases;
import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.yarn.Yarn;

/**
 * A few signs by which an old print is known from a new one: they follow from all that a sheet says and from its yarns'
 * colours, so they change with the plan.
 */
public final class SheetMark {
    /** No letter that is taken for a figure, and no figure that is taken for a letter. */
    private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int LENGTH = 5;

    private SheetMark() {}

    /** Of one sheet. */
    public static String of(Plan plan, StepSheet sheet, Locale locale) {
        return of(plan, sheet, PlainText.of(sheet, Phrases.of("thrumwright.sheet.steps", locale)));
    }

    /**
     * Of a loom's sheet in a class.
     *
     * @param member from 0
     */
    public static String of(WrittenClass written, int member) {
        return of(written.plan().plans().get(member), written.loom(member), written.text(member));
    }

    private static String of(Plan plan, StepSheet sheet, String words) {
        return of(Stream.of(sheet.name().stream(), Stream.of(words), colours(plan))
                .flatMap(part -> part));
    }

    /** Of a class's common lists: it changes with any of the sheets' cuts. */
    public static String of(ClassPlan plan, ClassSheet sheet, Locale locale) {
        return of(Stream.concat(
                Stream.of(ClassText.of(sheet, locale)), plan.plans().stream().flatMap(SheetMark::colours)));
    }

    private static Stream<String> colours(Plan plan) {
        List<Yarn> yarns = plan.piece().yarns();
        return yarns.stream().map(Yarn::colour).map(Objects::toString);
    }

    private static String of(Stream<String> parts) {
        byte[] sum = digest().digest(parts.collect(Collectors.joining("\u0000")).getBytes(StandardCharsets.UTF_8));
        StringBuilder mark = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            mark.append(SIGNS.charAt(sum[i] & SIGNS.length() - 1));
        }
        return mark.toString();
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

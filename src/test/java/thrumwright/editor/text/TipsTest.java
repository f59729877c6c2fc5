package thrumwright.editor.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A piece in inches has tips with examples in inches, and one in centimetres has none of them. */
class TipsTest {
    private static final List<String> BUNDLES = List.of("thrumwright.editor.texts", "thrumwright.blocks");
    private static final String INCHES = ".inches";

    private static final Pattern METRIC = Pattern.compile("\\d ?(mm|cm|m)\\b|/cm\\b");
    private static final Pattern INCH = Pattern.compile("\\d ?(in|yd|oz)\\b|/in\\b");
    /** How yarn is sold, in any country. */
    private static final String BY_WEIGHT = "\\d+ yd/lb";

    @Test
    void everyExampleHasThePiecesUnits() {
        Set<String> wrong = new TreeSet<>();
        int met = 0;
        for (String name : BUNDLES) {
            ResourceBundle bundle = ResourceBundle.getBundle(name, Locale.ROOT);
            for (String key : bundle.keySet()) {
                if (!key.startsWith("field.") || !key.contains(".tip")) {
                    continue;
                }
                String tip = bundle.getString(key).replaceAll(BY_WEIGHT, "");
                boolean inches = key.endsWith(INCHES);
                boolean hasOther = bundle.containsKey(key + INCHES);
                met += inches ? 1 : 0;
                if ((inches ? METRIC : INCH).matcher(tip).find()
                        || !inches && !hasOther && METRIC.matcher(tip).find()) {
                    wrong.add(key + ": " + tip);
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(met).isGreaterThan(15);
    }
}

package thrumwright.editor.canvas.label;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thrumwright.editor.edit.Amounts;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Butterflies;
import thrumwright.plan.Plan;
import thrumwright.plan.Work;

/**
 * What the label of a block says.
 *
 * @param name of the block
 * @param amount picks, rows or length; empty if there is none
 * @param height on the loom; for a fold the depth of the hem; empty for what has none
 * @param cut length to cut; empty if it takes no yarn
 */
public record BlockWording(String name, String amount, String height, String cut) {
    public static BlockWording of(Plan plan, Place place, BlockPlan block, Texts texts) {
        Shown shown = plan.piece().shown();
        return new BlockWording(
                texts.words().name(block.block()),
                Amounts.text(block.block()),
                height(plan, place, block, texts, shown),
                block.work()
                        .flatMap(Work::toCut)
                        .map(cut -> cut(cut.butterflies(), shown))
                        .orElse(""));
    }

    private static String height(Plan plan, Place place, BlockPlan block, Texts texts, Shown shown) {
        if (Amounts.hasHeight(block.block())) {
            return shown.height(block.height());
        }
        return plan.end(place)
                .hem()
                .filter(hem -> hem.blockId().equals(block.block().id()) && hem.folds())
                .map(hem -> texts.say("label.depth", Map.of("depth", shown.height(hem.depth()))))
                .orElse("");
    }

    private static String cut(Butterflies butterflies, Shown shown) {
        String each = shown.cut(butterflies.each());
        return butterflies.count() == 1 ? each : butterflies.count() + " × " + each;
    }

    /** @param column 0 for the name to 3 for the cut */
    String of(int column) {
        return switch (column) {
            case 0 -> name;
            case 1 -> amount;
            case 2 -> height;
            default -> cut;
        };
    }

    /** All of it in one line. */
    String whole() {
        return Stream.of(name, amount, height, cut)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    /** All of it as one sentence without its name, for those who hear it. */
    public String spoken(Texts texts) {
        StringBuilder spoken = new StringBuilder(amount);
        Optional.of(height).filter(text -> !text.isEmpty()).ifPresent(text -> comma(spoken, text));
        Optional.of(cut)
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> comma(spoken, texts.say("label.cut", Map.of("cut", text))));
        return spoken.toString();
    }

    private static void comma(StringBuilder spoken, String text) {
        spoken.append(spoken.length() == 0 ? "" : ", ").append(text);
    }
}

package thrumwright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Shown;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.plan.Finding.Code;

/** Looks a whole plan over. */
final class Findings {
    private final Plan plan;
    private final Piece piece;
    private final Shown shown;
    private final RepairFinder repairs;
    private final Words words = new Words(Locale.UK);
    private final List<Finding> found = new ArrayList<>();

    Findings(Plan plan) {
        this.plan = plan;
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.repairs = new RepairFinder(plan);
    }

    List<Finding> all() {
        found.addAll(new EndFindings(plan, plan.start(), words, repairs).all());
        addTop(new EndFindings(plan, plan.top(), words, repairs).all());
        fit();
        hemsAlike();
        stock();
        lastPick();
        reference();
        found.sort(Comparator.comparing(Finding::severity));
        return found;
    }

    /** Of a top that follows the start, what was already said of the start isn't said again. */
    private void addTop(List<Finding> ofTop) {
        for (Finding finding : ofTop) {
            boolean said = piece.topFollows()
                    && found.stream()
                            .anyMatch(other -> other.code() == finding.code()
                                    && other.blockId().equals(finding.blockId())
                                    && mirrors(finding.code()));
            if (!said) {
                found.add(finding);
            }
        }
    }

    private static boolean mirrors(Code code) {
        return code != Code.FREE_WARP_SHORT && code != Code.OTHER_COLOUR && code != Code.SAME_SHED;
    }

    private void fit() {
        double left = plan.budget().left();
        if (left < -0.05) {
            whole(
                    Code.DOES_NOT_FIT,
                    Map.of(
                            "short", shown.height(-left),
                            "top", shown.height(plan.top().height()),
                            "room", shown.height(plan.budget().workingRoom())),
                    repairs.doesNotFit(-left));
        }
    }

    private void hemsAlike() {
        if (plan.start().hem().isEmpty() || plan.top().hem().isEmpty()) {
            return;
        }
        double below = plan.start().hem().get().depth();
        double above = plan.top().hem().get().depth();
        if (Math.abs(below - above) >= Front.SAME_DEPTH) {
            boolean oneTakesABar = plan.start().hem().get().sleeve().isPresent()
                    != plan.top().hem().get().sleeve().isPresent();
            whole(
                    oneTakesABar ? Code.HEMS_DIFFER_FOR_A_BAR : Code.HEMS_DIFFER,
                    Map.of("below", shown.height(below), "above", shown.height(above)),
                    oneTakesABar ? Optional.empty() : repairs.hemsAlike(below, above));
        }
    }

    private void stock() {
        for (YarnTotal total : plan.totals()) {
            total.yarn()
                    .stock()
                    .filter(stock -> stock.mm() < total.length())
                    .ifPresent(stock -> whole(
                            Code.STOCK_SHORT,
                            Map.of(
                                    "yarn", total.yarn().name(),
                                    "needed", shown.total(total.length()),
                                    "stock", shown.total(stock.mm()),
                                    "short", shown.total(total.length() - stock.mm()))));
        }
    }

    private void lastPick() {
        boolean known = piece.design().lastShed().isPresent()
                && piece.design().lastSide().isPresent();
        if (!known && !plan.top().blocks().isEmpty()) {
            whole(
                    Code.LAST_PICK_ASSUMED,
                    Map.of(
                            "shed", words.shed(plan.afterDesign().lastShed().orElseThrow()),
                            "side", words.side(plan.afterDesign().side())));
        }
    }

    private void reference() {
        if (piece.habits().widthsOf() == Habits.WidthsOf.LOOM
                && piece.loom().uprights().isEmpty()) {
            whole(Code.WIDTHS_OF_WARP, Map.of(), repairs.widthsOfWarp());
        }
    }

    private void whole(Code code, Map<String, ?> values) {
        whole(code, values, Optional.empty());
    }

    private void whole(Code code, Map<String, ?> values, Optional<Repair> repair) {
        found.add(words.finding(code, Optional.empty(), Optional.empty(), values, repair));
    }
}

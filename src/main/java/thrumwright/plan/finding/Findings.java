package thrumwright.plan.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Shown;
import thrumwright.piece.Habits;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.ClosingShed;
import thrumwright.plan.EndPlan;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.YarnTotal;
import thrumwright.plan.comparison.Front;
import thrumwright.plan.finding.Finding.Code;
import thrumwright.plan.words.Words;
import thrumwright.yarn.Usage;
import thrumwright.yarn.Yarn;

/** Looks a whole plan over. */
public final class Findings {
    /** A cloth that draws in by more than this strains its edge ends (common practice, no source). */
    private static final double MUCH_DRAW_IN = 0.1;

    private final Plan plan;
    private final Piece piece;
    private final Shown shown;
    private final RepairFinder repairs;
    private final Words words = new Words(Locale.UK);
    private final List<Finding> found = new ArrayList<>();

    public Findings(Plan plan) {
        this.plan = plan;
        this.piece = plan.piece();
        this.shown = piece.shown();
        this.repairs = new RepairFinder(plan);
    }

    public List<Finding> all() {
        found.addAll(new EndFindings(plan, plan.start(), words, repairs).all());
        addTop(new EndFindings(plan, plan.top(), words, repairs).all());
        fit();
        hemsAlike();
        found.addAll(stock(plan.totals(), shown, words));
        lastPick();
        closingShed();
        reference();
        measured();
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
        if (left < -0.05 && plan.budget().closed()) {
            whole(
                    Code.LOOPS_DO_NOT_FIT,
                    Map.of(
                            "short", shown.height(-left),
                            "stand", shown.height(plan.budget().open() - left)),
                    repairs.doesNotFit(-left));
        } else if (left < -0.05) {
            whole(
                    Code.DOES_NOT_FIT,
                    Map.of(
                            "short", shown.height(-left),
                            "top", shown.height(plan.top().height()),
                            "room", shown.height(plan.budget().workingRoom())),
                    repairs.doesNotFit(-left));
        }
    }

    private static boolean faced(EndPlan end) {
        return end.hem().flatMap(Hem::band).isPresent();
    }

    private void hemsAlike() {
        if (plan.start().hem().isEmpty() || plan.top().hem().isEmpty()) {
            return;
        }
        if (faced(plan.start()) || faced(plan.top())) {
            // how deep a band lies can't be seen from the front, nor mended by picks
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

    /** What there isn't enough of. */
    static List<Finding> stock(List<YarnTotal> totals, Shown shown, Words words) {
        List<Finding> found = new ArrayList<>();
        for (YarnTotal total : totals) {
            double stock = total.yarn().stock().map(Length::mm).orElse(Double.POSITIVE_INFINITY);
            if (stock < total.length()) {
                Map<String, String> values = Map.of(
                        "yarn", total.yarn().name(),
                        "needed", shown.total(total.length()),
                        "stock", shown.total(stock),
                        "short", shown.total(total.length() - stock));
                found.add(
                        words.finding(Code.STOCK_SHORT, Optional.empty(), Optional.empty(), values, Optional.empty()));
            }
        }
        return found;
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

    /** Towards loops at the top there is less and less room to weave. */
    private void closingShed() {
        plan.top().loops().ifPresent(loops -> {
            ClosingShed shed = plan.closingShed();
            Map<String, Object> values = Map.of(
                    "block", words.name(loops),
                    "hands", shown.height(shed.hands()),
                    "opening", shown.height(ClosingShed.BUTTERFLY),
                    "needle", shown.height(shed.needle()),
                    "thin", shown.fine(ClosingShed.opening(shed.needle())));
            found.add(words.finding(
                    Code.SHED_CLOSES, Optional.of(Place.TOP), Optional.of(loops.id()), values, Optional.empty()));
        });
    }

    private void reference() {
        if (piece.habits().widthsOf() == Habits.WidthsOf.LOOM
                && piece.loom().uprights().isEmpty()) {
            whole(Code.WIDTHS_OF_WARP, Map.of(), repairs.widthsOfWarp());
        }
    }

    /** What was measured on this piece and can't be right, or isn't as it should be. */
    private void measured() {
        double nominal = piece.warp().nominalWidth();
        piece.warp().woven().ifPresent(woven -> {
            Map<String, Object> values = Map.of(
                    "woven",
                    shown.cut(woven.mm()),
                    "nominal",
                    shown.cut(nominal),
                    "share",
                    shown.decimals(100 * piece.warp().drawIn(), 1));
            if (!piece.warp().wovenLikely()) {
                whole(Code.WOVEN_WIDTH_UNLIKELY, values);
            } else if (piece.warp().drawIn() > MUCH_DRAW_IN) {
                whole(Code.DRAWS_IN, values);
            }
        });
        for (Yarn yarn : piece.yarns()) {
            piece.measuredEase(yarn)
                    .filter(ease -> ease < Piece.LEAST_EASE || ease > Piece.MOST_EASE)
                    .ifPresent(ease -> usedUnlikely(yarn, yarn.usage().orElseThrow()));
        }
    }

    private void usedUnlikely(Yarn yarn, Usage usage) {
        whole(
                Code.YARN_USED_UNLIKELY,
                Map.of(
                        "yarn", yarn.name(),
                        "picks", usage.picks(),
                        "used", shown.cut(usage.length().mm()),
                        "worked", shown.cut(piece.setting(yarn).plain(usage.picks()))));
    }

    private void whole(Code code, Map<String, ?> values) {
        whole(code, values, Optional.empty());
    }

    private void whole(Code code, Map<String, ?> values, Optional<Repair> repair) {
        found.add(words.finding(code, Optional.empty(), Optional.empty(), values, repair));
    }
}

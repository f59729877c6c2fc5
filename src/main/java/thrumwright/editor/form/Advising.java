package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thrumwright.block.Support;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Advice;
import thrumwright.plan.words.Recommendations;
import thrumwright.yarn.Yarn;

/** What is recommended beside the fields. */
final class Advising {
    private Advising() {}

    static List<Advice> warp(Piece piece, Locale locale) {
        Recommendations recommendations = new Recommendations(piece, locale);
        List<Advice> all = new ArrayList<>(recommendations.sett());
        all.add(recommendations.gap(piece.stripe(Place.START)));
        return all;
    }

    static List<Advice> yarn(Piece piece, Yarn yarn, Locale locale) {
        Recommendations recommendations = new Recommendations(piece, locale);
        return List.of(recommendations.picks(yarn), recommendations.coverage(yarn));
    }

    /** How deep a hem must be for what it is to take, for none what a strip would need; and how deep hems are published. */
    static List<Advice> fold(Plan plan, Place place, Locale locale) {
        Recommendations recommendations = new Recommendations(plan.piece(), locale);
        Optional<Hem> hem = plan.end(place).hem();
        List<Advice> all = new ArrayList<>();
        all.add(hem.flatMap(Hem::sleeve)
                .map(sleeve -> forSupport(recommendations, sleeve.support()))
                .orElseGet(() -> recommendations.strip(plan.strip().width().mm())));
        hem.filter(Hem::folds)
                .filter(one -> one.band().isEmpty())
                .ifPresent(one -> all.add(recommendations.hem(one.depth())));
        return all;
    }

    /** How high headings of scrap are published, if the block is one. */
    static List<Advice> waste(Plan plan, Place place, String id, Locale locale) {
        Recommendations recommendations = new Recommendations(plan.piece(), locale);
        return plan.end(place)
                .block(id)
                .filter(block -> block.block().key().equals("plain-waste"))
                .map(block -> List.of(recommendations.scrap(block.height())))
                .orElse(List.of());
    }

    private static Advice forSupport(Recommendations recommendations, Support support) {
        return switch (support.kind()) {
            case BAR -> recommendations.bar(support.thick());
            case SLAT -> recommendations.slat(support.size().mm(), support.thick());
            case STRIP -> recommendations.strip(support.size().mm());
        };
    }
}

package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import thrumwright.block.Support;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.Hem;
import thrumwright.plan.Plan;
import thrumwright.plan.words.Advice;
import thrumwright.plan.words.Recommendations;
import thrumwright.yarn.Yarn;

/** What is recommended beside the fields, a sentence a line, each with where it comes from. */
final class Advising {
    private Advising() {}

    static String warp(Piece piece, Locale locale) {
        Recommendations recommendations = new Recommendations(piece, locale);
        List<Advice> all = new ArrayList<>(recommendations.sett());
        all.add(recommendations.gap(piece.stripe(Place.START)));
        return told(all);
    }

    static String yarn(Piece piece, Yarn yarn, Locale locale) {
        Recommendations recommendations = new Recommendations(piece, locale);
        return told(List.of(recommendations.picks(yarn), recommendations.coverage(yarn)));
    }

    /** How deep a hem must be for what it is to take, for none what a strip would need; and how deep hems are published. */
    static String fold(Plan plan, Place place, Locale locale) {
        Recommendations recommendations = new Recommendations(plan.piece(), locale);
        Optional<Hem> hem = plan.end(place).hem();
        List<Advice> all = new ArrayList<>();
        all.add(hem.flatMap(Hem::sleeve)
                .map(sleeve -> forSupport(recommendations, sleeve.support()))
                .orElseGet(() -> recommendations.strip(plan.strip().width().mm())));
        hem.filter(Hem::folds)
                .filter(one -> one.band().isEmpty())
                .ifPresent(one -> all.add(recommendations.hem(one.depth())));
        return told(all);
    }

    /** How high headings of scrap are published, if the block is one. */
    static String waste(Plan plan, Place place, String id, Locale locale) {
        Recommendations recommendations = new Recommendations(plan.piece(), locale);
        return plan.end(place)
                .block(id)
                .filter(block -> block.block().key().equals("plain-waste"))
                .map(block -> recommendations.scrap(block.height()).told())
                .orElse("");
    }

    private static Advice forSupport(Recommendations recommendations, Support support) {
        return switch (support.kind()) {
            case BAR -> recommendations.bar(support.thick());
            case SLAT -> recommendations.slat(support.size().mm(), support.thick());
            case STRIP -> recommendations.strip(support.size().mm());
        };
    }

    private static String told(List<Advice> all) {
        return all.stream().map(Advice::told).collect(Collectors.joining("\n"));
    }
}

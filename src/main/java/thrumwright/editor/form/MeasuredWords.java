package thrumwright.editor.form;

import java.util.Map;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;
import thrumwright.yarn.Yarn;

/** What the weaver measured beside what is worked out, in sentences. */
final class MeasuredWords {
    private MeasuredWords() {}

    static String width(Plan plan, Texts texts) {
        Piece piece = plan.piece();
        Warp warp = piece.warp();
        Shown shown = piece.shown();
        if (!warp.wovenKnown()) {
            return texts.say(
                    "measured.width.not",
                    Map.of(
                            "share", shown.decimals(100 * Warp.USUAL_DRAW_IN, 0),
                            "usual", shown.height(warp.usualWidth())));
        }
        return texts.say(
                "measured.width",
                Map.of(
                        "nominal", shown.cut(warp.nominalWidth()),
                        "share", shown.decimals(100 * warp.drawIn(), 1),
                        "sett", shown.fine(warp.sett().spacing()),
                        "spacing", shown.fine(warp.spacing()),
                        "width", shown.height(plan.finishedWidth())));
    }

    /** Thickness and, where it was measured, ease of a yarn. */
    static String yarn(Piece piece, Yarn yarn, Texts texts) {
        Shown shown = piece.shown();
        StringBuilder said = new StringBuilder(texts.say(
                "yarn.comes-to",
                Map.of(
                        "thick", shown.fine(yarn.diameter()),
                        "beaten", shown.fine(yarn.beaten()),
                        "tex", shown.decimals(yarn.tex(), 0))));
        yarn.sample()
                .ifPresent(sample -> said.append(' ')
                        .append(texts.say(
                                "measured.sample",
                                Map.of(
                                        "sample", shown.fine(sample.beaten()),
                                        "firmness", shown.fine(yarn.beatenByFirmness())))));
        yarn.usage()
                .ifPresent(usage -> said.append(' ')
                        .append(texts.say(
                                "measured.used",
                                Map.of(
                                        "picks", usage.picks(),
                                        "worked", shown.cut(piece.setting(yarn).plain(usage.picks())),
                                        "used", shown.cut(usage.length().mm()),
                                        "ease", shown.decimals(100 * piece.ease(yarn), 1),
                                        "usual",
                                                shown.decimals(
                                                        100 * piece.habits().ease(), 1)))));
        return said.toString();
    }
}

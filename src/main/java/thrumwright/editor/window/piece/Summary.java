package thrumwright.editor.window.piece;

import java.util.Map;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.words.HeightWords;

/** The piece in one line. */
final class Summary {
    private Summary() {}

    static String of(Plan plan, Texts texts) {
        Shown shown = plan.piece().shown();
        HeightWords heights = new HeightWords(plan, texts.phrases());
        double start = plan.budget().startLine();
        double left = plan.budget().left();
        String room = left < -0.05
                ? texts.say("summary.short", Map.of("short", shown.height(-left)))
                : texts.say("summary.left", Map.of("left", shown.height(Math.max(0, left))));
        return texts.say(
                "summary",
                Map.of(
                        "ends", plan.piece().warp().ends(),
                        "width", shown.height(plan.finishedWidth()),
                        "height", shown.height(plan.finishedHeight()),
                        "start", plan.room().travels() ? heights.at(Place.START, start) : shown.height(start),
                        "stop", heights.at(Place.TOP, plan.budget().stopLine()),
                        "room", room));
    }
}

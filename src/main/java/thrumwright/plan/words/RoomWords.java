package thrumwright.plan.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.plan.LoomRoom;
import thrumwright.plan.Plan;
import thrumwright.plan.UsualRoom;

/** Says what a loom leaves of a warp end, and what it is for. */
public record RoomWords(Phrases phrases) {
    /** @param locale the language wanted; where there is no text in it, English */
    public RoomWords(Locale locale) {
        this(Phrases.of("thrumwright.plan.advice", locale));
    }

    /** What is as usual, each with what it is for; nothing where all is said by the weaver. */
    public List<Advice> of(Plan plan) {
        Loom loom = plan.piece().loom();
        UsualRoom usual = plan.room().usual();
        Shown shown = plan.piece().shown();
        List<Advice> said = new ArrayList<>();
        if (loom.clearance().isEmpty()) {
            double below = usual.below().mm();
            said.add(said("room.below." + usual.below().why(), below, shown.height(below)));
        }
        if (loom.workingRoom().isEmpty() && !plan.budget().closed()) {
            double above = usual.above().mm();
            said.add(said("room.above." + usual.above().why(), above, shown.height(above)));
        }
        if (loom.warpPerEnd().isEmpty()) {
            said.add(said("room.end." + loom.kind().key(), usual.perEnd(), shown.cut(usual.perEnd())));
        }
        return said;
    }

    private Advice said(String key, double mm, String length) {
        String sentence = phrases.say(key, Map.of("length", length));
        return new Advice(Advice.Topic.FREE_WARP, mm, sentence, phrases.say(key + ".source"));
    }

    /** The loom with all that is usual as if it were typed. */
    public Loom typed(Piece piece) {
        LoomRoom room = Plan.of(piece).room();
        Loom loom = piece.loom();
        return loom.withClearance(typed(piece, loom.clearance(), room.clearance()))
                .withWorkingRoom(typed(piece, loom.workingRoom(), room.workingRoom()))
                .withWarpPerEnd(typed(piece, loom.warpPerEnd(), Math.ceil(room.perEnd())));
    }

    private static Optional<Length> typed(Piece piece, Optional<Length> own, double mm) {
        var unit = piece.habits().units().usual();
        double sixteenths = Math.ceil(mm / unit.millimetres() * 16 - 1e-6) / 16;
        return own.or(() -> Optional.of(Length.of(sixteenths, unit)));
    }
}

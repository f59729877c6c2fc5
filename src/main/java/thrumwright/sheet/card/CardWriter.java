package thrumwright.sheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Phrases;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Top;
import thrumwright.plan.Plan;
import thrumwright.sheet.Chapter;
import thrumwright.sheet.Step;
import thrumwright.sheet.StepSheet;

/** Writes a card from a plan and the sheet that was written from it. */
final class CardWriter {
    private final CardVoice voice;
    private final Phrases phrases;
    private final Piece piece;
    private final Optional<String> name;
    private final StepSheet sheet;
    private final Place place;

    CardWriter(Plan plan, Optional<String> name, StepSheet sheet, Place place, Locale locale) {
        this.voice = CardVoice.of(plan, locale);
        this.phrases = voice.phrases();
        this.piece = plan.piece();
        this.name = name;
        this.sheet = sheet;
        this.place = place;
    }

    Card card() {
        CardDifferences differences = new CardDifferences(voice, startSteps());
        List<CardRow> rows = new CardRows(voice, sheet, voice.plan().end(place), differences).rows();
        CardLines lines = new CardLines(voice, sheet);
        return new Card(
                place,
                phrases.say(place == Place.START ? "title.start" : "title.top"),
                piece.title(),
                facts(),
                CardKeys.of(voice, place, rows),
                lines.begin(place),
                rows,
                lines.after(place),
                place == Place.START ? List.of() : notes(differences));
    }

    private List<Step> startSteps() {
        return sheet.chapters().stream()
                .filter(chapter -> chapter.kind() == Chapter.Kind.START)
                .flatMap(chapter -> chapter.steps().stream())
                .toList();
    }

    private List<String> notes(CardDifferences differences) {
        List<String> notes = new ArrayList<>();
        if (piece.top() instanceof Top.FollowsStart) {
            notes.add(phrases.say("backwards"));
        }
        notes.addAll(differences.ofAll());
        notes.add(phrases.say(
                "reckoned",
                Map.of("line", voice.above(Place.TOP, voice.plan().budget().designEnds()))));
        return notes;
    }

    /** What lets a card hang by itself: whose it is, on which loom, and room for the date. */
    private String facts() {
        String loom = piece.loom().name();
        String facts = phrases.say(
                loom.isBlank() ? "facts.no-loom" : "facts",
                Map.of(
                        "loom", loom,
                        "ends", piece.warp().ends(),
                        "sett", piece.shown().typed(piece.warp().sett().text())));
        return name.map(whose -> phrases.say(
                        whose.isBlank() ? "facts.no-name" : "facts.name", Map.of("name", whose, "facts", facts)))
                .orElse(facts);
    }
}

package thrumwright.sheet.card;

import java.util.Locale;
import thrumwright.block.Course;
import thrumwright.block.Passing;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.measure.Phrases;
import thrumwright.measure.Shown;
import thrumwright.piece.Place;
import thrumwright.plan.Plan;
import thrumwright.plan.words.HeightWords;
import thrumwright.plan.words.Words;

/** What all that write a card's words speak with. */
record CardVoice(Plan plan, Phrases phrases, Words words, Shown shown, Locale locale) {
    static CardVoice of(Plan plan, Locale locale) {
        Phrases phrases = Phrases.of("thrumwright.sheet.card", locale);
        return new CardVoice(plan, phrases, new Words(locale), plan.piece().shown(), locale);
    }

    int ends() {
        return plan.piece().warp().ends();
    }

    /** A height with its unit, to be read from afar. */
    String height(double mm) {
        return shown.figures(mm) + "\u00a0" + shown.unit();
    }

    /** A height with what it is said from. */
    String above(Place place, double mm) {
        return new HeightWords(plan, phrases).figures(place, mm);
    }

    /** The figures of a height as it is said at an end. */
    String figures(Place place, double mm) {
        return shown.figures(plan.above(place, mm));
    }

    /** “over” or “under”. */
    String passing(Passing passing) {
        return phrases.say("meets." + passing);
    }

    Passing meets(Shed shed, Side from) {
        return shed.meets(from, ends());
    }

    /** How the next pick after a course meets the outermost end where it begins. */
    Passing next(Course course) {
        return meets(course.nextShed(), course.side());
    }
}

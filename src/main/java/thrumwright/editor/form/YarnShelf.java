package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import thrumwright.editor.look.Swatch;
import thrumwright.editor.text.Texts;
import thrumwright.piece.Stash;
import thrumwright.yarn.TradeYarn;
import thrumwright.yarn.Yarn;

/** Yarns to take for a piece: the weaver's own, those used last first, and those that the trade sells. */
public record YarnShelf(Stash stash, Texts texts) {
    /** The weaver's own. */
    public List<Choice<Yarn>> own() {
        return stash.yarns().stream().map(YarnShelf::choice).toList();
    }

    /** By their names in the trade. */
    public List<Choice<Yarn>> trade() {
        List<Choice<Yarn>> all = new ArrayList<>();
        for (TradeYarn each : TradeYarn.values()) {
            all.add(choice(each.yarn("trade", texts.name("trade", each))));
        }
        return all;
    }

    private static Choice<Yarn> choice(Yarn yarn) {
        return new Choice<>(yarn, yarn.name(), new Swatch(yarn.colour()));
    }
}

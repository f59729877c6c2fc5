package thrumwright.store;

import java.util.List;
import java.util.Optional;
import thrumwright.measure.Phrase;
import thrumwright.piece.LoomKind;

/** How the kinds of loom stand in a file: an object under the kind's own name; a loom from bar to bar needs none. */
final class LoomKindFormats {
    static final Format<Optional<LoomKind>> KIND = kind();

    private LoomKindFormats() {}

    private static Format<Optional<LoomKind>> kind() {
        return new OneOf<LoomKind>(
                        new Phrase("file.loom-kind"),
                        List.of(
                                named("roundFrame", LoomKind.RoundFrame.class, roundFrame()),
                                named("joiningBar", LoomKind.JoiningBar.class, joiningBar()),
                                named("fixedPitch", LoomKind.Pegged.class, pegged()),
                                named("rollers", LoomKind.Rollers.class, rollers())))
                .orNone();
    }

    private static <S extends LoomKind> OneOf.Branch<LoomKind, S> named(String name, Class<S> sort, Format<S> inside) {
        var outside = new Declared<S>();
        var kind = outside.needed(name, inside, value -> value);
        return OneOf.Branch.of(name, sort, outside.as(kind::of));
    }

    private static Format<LoomKind.RoundFrame> roundFrame() {
        var round = new Declared<LoomKind.RoundFrame>();
        var spacer = round.needed("spacer", Choices.SPACER, LoomKind.RoundFrame::spacer);
        return round.as(in -> new LoomKind.RoundFrame(spacer.of(in)));
    }

    private static Format<LoomKind.JoiningBar> joiningBar() {
        var joining = new Declared<LoomKind.JoiningBar>();
        var above = joining.needed("above", Types.LENGTH, LoomKind.JoiningBar::above);
        return joining.as(in -> new LoomKind.JoiningBar(above.of(in)));
    }

    private static Format<LoomKind.Pegged> pegged() {
        var pegged = new Declared<LoomKind.Pegged>();
        var pitch = pegged.needed("pitch", Types.SETT, LoomKind.Pegged::pitch);
        var peg = pegged.needed("of", Choices.PEG, LoomKind.Pegged::peg);
        return pegged.as(in -> new LoomKind.Pegged(pitch.of(in), peg.of(in)));
    }

    private static Format<LoomKind.Rollers> rollers() {
        var rollers = new Declared<LoomKind.Rollers>();
        var waste = rollers.needed("waste", Types.LENGTH, LoomKind.Rollers::waste);
        return rollers.as(in -> new LoomKind.Rollers(waste.of(in)));
    }
}

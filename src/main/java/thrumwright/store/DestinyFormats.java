package thrumwright.store;

import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Label;

/** How what becomes of a piece off the loom stands in its file. */
final class DestinyFormats {
    static final Format<Destiny> DESTINY = destiny();

    private DestinyFormats() {}

    private static Format<Destiny> destiny() {
        var destiny = new Declared<Destiny>();
        var madeFor = destiny.optional("for", Choices.MADE_FOR, Destiny::madeFor);
        var border = destiny.optional("border", Types.LENGTH, Destiny::border);
        var lined = destiny.spare("lined", Types.FLAG, false, Destiny::lined);
        var cord = destiny.optional("edgeCord", cord(), Destiny::cord);
        var label = destiny.optional("label", label(), Destiny::label);
        return destiny.as(in -> new Destiny(madeFor.of(in), border.of(in), lined.of(in), cord.of(in), label.of(in)));
    }

    private static Format<EdgeCord> cord() {
        var cord = new Declared<EdgeCord>();
        var along = cord.usual("along", Choices.ALONG, EdgeCord.Along.ENDS, EdgeCord::along);
        var thick = cord.needed("thick", Types.LENGTH, EdgeCord::thick);
        var plaited = cord.spare("plaited", Types.FLAG, false, EdgeCord::plaited);
        return cord.as(in -> new EdgeCord(along.of(in), thick.of(in), plaited.of(in)));
    }

    private static Format<Label> label() {
        var label = new Declared<Label>();
        var maker = label.spare("maker", Types.text("like.text"), "", Label::maker);
        var year = label.spare("year", Types.text("like.text"), "", Label::year);
        return label.as(in -> new Label(maker.of(in), year.of(in)));
    }
}

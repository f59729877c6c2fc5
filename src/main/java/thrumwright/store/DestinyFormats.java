package thrumwright.store;

import java.util.Optional;
import thrumwright.measure.Length;
import thrumwright.piece.Destiny;
import thrumwright.piece.EdgeCord;
import thrumwright.piece.Label;
import thrumwright.piece.MadeFor;

/** How what becomes of a piece off the loom stands in its file. */
final class DestinyFormats {
    private static final Format<EdgeCord> CORD = new Declared<>() {
        private final Entry<EdgeCord.Along> along = usual("along", Choices.ALONG, EdgeCord.Along.ENDS);
        private final Entry<Length> thick = needed("thick", Types.LENGTH);
        private final Entry<Boolean> plaited = spare("plaited", Types.FLAG, false);

        @Override
        public EdgeCord make(Fields in) throws FileProblem {
            return new EdgeCord(along.of(in), thick.of(in), plaited.of(in));
        }

        @Override
        public void write(EdgeCord cord, Writing out) {
            out.put(along, cord.along()).put(thick, cord.thick()).put(plaited, cord.plaited());
        }
    };

    private static final Format<Label> LABEL = new Declared<>() {
        private final Entry<String> maker = spare("maker", Types.text("like.text"), "");
        private final Entry<String> year = spare("year", Types.text("like.text"), "");

        @Override
        public Label make(Fields in) throws FileProblem {
            return new Label(maker.of(in), year.of(in));
        }

        @Override
        public void write(Label label, Writing out) {
            out.put(maker, label.maker()).put(year, label.year());
        }
    };

    static final Format<Destiny> DESTINY = new Declared<>() {
        private final Entry<Optional<MadeFor>> madeFor = optional("for", Choices.MADE_FOR);
        private final Entry<Optional<Length>> border = optional("border", Types.LENGTH);
        private final Entry<Boolean> lined = spare("lined", Types.FLAG, false);
        private final Entry<Optional<EdgeCord>> cord = optional("edgeCord", CORD);
        private final Entry<Optional<Label>> label = optional("label", LABEL);

        @Override
        public Destiny make(Fields in) throws FileProblem {
            return new Destiny(madeFor.of(in), border.of(in), lined.of(in), cord.of(in), label.of(in));
        }

        @Override
        public void write(Destiny destiny, Writing out) {
            out.put(madeFor, destiny.madeFor()).put(border, destiny.border()).put(lined, destiny.lined());
            out.put(cord, destiny.cord()).put(label, destiny.label());
        }
    };

    private DestinyFormats() {}
}

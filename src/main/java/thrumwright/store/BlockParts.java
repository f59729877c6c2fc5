package thrumwright.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Amount;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.Side;
import thrumwright.block.Tag;
import thrumwright.block.Use;
import thrumwright.measure.Length;
import thrumwright.measure.Phrase;

/** What blocks of several kinds have, as it stands in a file. */
final class BlockParts {
    static final ValueType<Integer> ROWS = Types.whole(1, Amount.MOST_ROWS);
    static final ValueType<Integer> GROUP = Types.whole(1, 24);
    static final ValueType<Integer> SEVERAL = Types.whole(2, 24);

    static final Format<Tag> TAG = new Declared<>() {
        private final Entry<String> id = needed("id", Types.id("like.block-id"));
        private final Entry<String> label = spare("label", Types.text("like.text"), "");
        private final Entry<String> words = spare("words", Types.text("like.text"), "");

        @Override
        public Tag make(Fields in) throws FileProblem {
            return new Tag(id.of(in), label.of(in), words.of(in));
        }

        @Override
        public void write(Tag tag, Writing out) {
            out.put(id, tag.id()).put(label, tag.label()).put(words, tag.words());
        }
    };

    private static final Format<Material.OfRole> OF_ROLE = new Declared<>() {
        private final Entry<MaterialRole> role = needed("of", Choices.ROLE);

        @Override
        public Material.OfRole make(Fields in) throws FileProblem {
            return new Material.OfRole(role.of(in));
        }

        @Override
        public void write(Material.OfRole material, Writing out) {
            out.put(role, material.role());
        }
    };

    private static final Format<Material.Own> OWN = new Declared<>() {
        private final Entry<String> yarn = needed("yarn", Types.YARN);

        @Override
        public Material.Own make(Fields in) throws FileProblem {
            return new Material.Own(yarn.of(in));
        }

        @Override
        public void write(Material.Own material, Writing out) {
            out.put(yarn, material.yarnId());
        }
    };

    static final Format<Material> MATERIAL = new OneOf<>(
            new Phrase("file.material", Map.of("parts", Choices.ROLE.like())),
            List.of(
                    OneOf.Branch.of("of", Material.OfRole.class, OF_ROLE),
                    OneOf.Branch.of("yarn", Material.Own.class, OWN)));

    static final Format<Use> USE = new Declared<>() {
        private final Entry<Material> material = together(MATERIAL);
        private final Entry<Boolean> comesOut = spare("comesOut", Types.FLAG, false);
        private final Entry<Optional<Side>> from = optional("from", Choices.SIDE);
        private final Entry<Boolean> byItself = spare("cutByItself", Types.FLAG, false);

        @Override
        public Use make(Fields in) throws FileProblem {
            return new Use(material.of(in), comesOut.of(in), from.of(in), byItself.of(in));
        }

        @Override
        public void write(Use use, Writing out) {
            out.put(material, use.material()).put(comesOut, use.comesOut());
            out.put(from, use.from()).put(byItself, use.byItself());
        }
    };

    private static final Format<Amount.Picks> PICKS = new Declared<>() {
        private final Entry<Integer> count = needed("picks", ROWS);

        @Override
        public Amount.Picks make(Fields in) throws FileProblem {
            return new Amount.Picks(count.of(in));
        }

        @Override
        public void write(Amount.Picks picks, Writing out) {
            out.put(count, picks.count());
        }
    };

    private static final Format<Amount.Height> HEIGHT = new Declared<>() {
        private final Entry<Length> height = needed("height", Types.LENGTH);

        @Override
        public Amount.Height make(Fields in) throws FileProblem {
            return new Amount.Height(height.of(in));
        }

        @Override
        public void write(Amount.Height amount, Writing out) {
            out.put(height, amount.height());
        }
    };

    static final Format<Amount> AMOUNT = new OneOf<>(
            new Phrase("file.amount"),
            List.of(
                    OneOf.Branch.of("picks", Amount.Picks.class, PICKS),
                    OneOf.Branch.of("height", Amount.Height.class, HEIGHT)));

    private BlockParts() {}
}

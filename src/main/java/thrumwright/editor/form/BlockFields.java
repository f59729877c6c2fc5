package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.block.Block;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.Passing;
import thrumwright.block.Shed;
import thrumwright.block.Side;
import thrumwright.block.TakesYarn;
import thrumwright.block.YarnBlock;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.UnitSystem;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.plan.BlockPlan;
import thrumwright.plan.Work;

/** Adds fields about one block to a panel. */
record BlockFields(Desk desk, FieldPanel panel, Place place, String id) {
    UnitSystem units() {
        return desk.session().piece().habits().units();
    }

    /** @param kind while the block is of that sort, and no reflection of another; else its fields show nothing and change nothing */
    <B extends Block> FieldPanel.Section<B> section(Class<B> kind) {
        String name = desk.session()
                .shown()
                .block(place, id)
                .map(desk.texts().words()::name)
                .orElse("");
        return panel.about(new Subject<B>(
                place + "/" + id,
                name,
                piece -> own(piece).filter(kind::isInstance).map(kind::cast),
                (piece, other) -> desk.edits().replaced(piece, place, other)));
    }

    private Optional<Block> own(Piece piece) {
        return piece.block(place, id).filter(block -> place == Place.START || !piece.topFollows());
    }

    /** What is recommended for the hem of this block's end. */
    void foldAdvice() {
        panel.advice(
                () -> Advising.fold(desk.session().plan(), place, desk.texts().locale()));
    }

    /** How high headings of scrap yarn are published, beside one. */
    void wasteAdvice() {
        panel.advice(() ->
                Advising.waste(desk.session().plan(), place, id, desk.texts().locale()));
    }

    /** Which yarn it takes and from which side it comes. */
    FieldPanel.Section<YarnBlock> yarn() {
        FieldPanel.Section<YarnBlock> yarn = section(YarnBlock.class);
        material(yarn);
        return yarn.oneOrNone(
                "block.from",
                "side",
                "choice.in-turn",
                Side.values(),
                part -> part.use().from(),
                (part, side) -> part.withUse(part.use().withFrom(side)));
    }

    <B extends TakesYarn> FieldPanel.Section<B> material(FieldPanel.Section<B> section) {
        section.choice("block.yarn", this::materials, part -> part.use().material(), BlockFields::withMaterial);
        return section;
    }

    @SuppressWarnings("unchecked")
    private static <B extends TakesYarn> B withMaterial(B part, Material material) {
        return (B) part.withMaterial(material);
    }

    /** The parts that yarns play, then every yarn by itself. */
    private List<Choice<Material>> materials() {
        Piece piece = desk.session().shown();
        List<Choice<Material>> all = new ArrayList<>();
        for (MaterialRole role : MaterialRole.values()) {
            Material part = new Material.OfRole(role);
            String text = desk.texts()
                    .say(
                            "material." + key(role),
                            Map.of("yarn", piece.yarnOf(part, place).name()));
            all.add(new Choice<>(
                    part, text, new Swatch(piece.yarnOf(part, place).colour())));
        }
        piece.yarns()
                .forEach(
                        own -> all.add(new Choice<>(new Material.Own(own.id()), own.name(), new Swatch(own.colour()))));
        return all;
    }

    /** As it comes, or over or under the outermost end at the side where it begins as planned now. */
    List<Choice<Optional<Shed>>> sheds() {
        Side from = desk.session()
                .plan()
                .end(place)
                .block(id)
                .flatMap(BlockPlan::work)
                .map(Work::begins)
                .orElse(Side.LEFT);
        return sheds(desk, "choice.in-turn", from);
    }

    /**
     * None, and both sheds as a pick meets the outermost end in them.
     *
     * @param none key of what stands for none
     * @param from the side where the pick begins
     */
    static List<Choice<Optional<Shed>>> sheds(Desk desk, String none, Side from) {
        int ends = desk.session().shown().warp().ends();
        List<Choice<Optional<Shed>>> all = new ArrayList<>();
        all.add(Choice.of(Optional.empty(), desk.texts().say(none)));
        for (Passing passing : Passing.values()) {
            all.add(Choice.of(
                    Optional.of(Shed.meeting(passing, from, ends)),
                    desk.texts().words().meets(passing, from)));
        }
        return all;
    }

    private String key(MaterialRole role) {
        return switch (role) {
            case WARP_CORD -> "cord";
            case WASTE -> "waste";
            case WEFT -> place == Place.START ? "weft.start" : "weft.top";
        };
    }
}

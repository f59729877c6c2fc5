package thrumwright.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import thrumwright.block.Block;
import thrumwright.block.Material;
import thrumwright.block.MaterialRole;
import thrumwright.block.Posts;
import thrumwright.block.Setting;
import thrumwright.block.TakesYarn;
import thrumwright.measure.Refused;
import thrumwright.measure.Shown;
import thrumwright.yarn.Yarn;

/**
 * A piece of weaving: the whole document. Immutable; every yarn that it refers to is among its yarns, and what becomes of
 * the warp ends is listed at the edge that stays, wherever it was put.
 *
 * @param title what the weaver calls it
 * @param note anything that the weaver wants to keep with it
 * @param destiny what becomes of it off the loom
 * @param yarns all yarns, with different ids
 * @param cordId yarn of the stiff parts
 * @param wasteId yarn of what comes out again
 * @param ticks how far it is woven
 * @param measures what was measured on the way
 * @param meant what is wanted as it is, though a finding says otherwise
 */
public record Piece(
        String title,
        String note,
        Destiny destiny,
        Loom loom,
        Warp warp,
        List<Yarn> yarns,
        String cordId,
        String wasteId,
        Design design,
        Habits habits,
        End start,
        Top top,
        Ticks ticks,
        Measures measures,
        Meant meant) {
    /** A measured ease is believed between these. */
    public static final double LEAST_EASE = -0.25;

    public static final double MOST_EASE = 1;

    /** @throws IllegalArgumentException if a yarn is missing or twice there, or the loom can't have that sett; the message is for the user */
    public Piece {
        Objects.requireNonNull(title);
        Objects.requireNonNull(note);
        Objects.requireNonNull(destiny);
        Objects.requireNonNull(loom);
        Objects.requireNonNull(habits);
        Objects.requireNonNull(top);
        Objects.requireNonNull(ticks);
        Objects.requireNonNull(measures);
        Objects.requireNonNull(meant);
        yarns = Wound.from(yarns);
        loom.kind().check(warp.sett());
        start = start.withFinishesAtTheEdge(Place.START);
        top = top instanceof Top.OnItsOwn own ? new Top.OnItsOwn(own.end().withFinishesAtTheEdge(Place.TOP)) : top;
        Set<String> ids = new HashSet<>();
        for (Yarn yarn : yarns) {
            if (!ids.add(yarn.id())) {
                throw new Refused("yarns.twice", Map.of("id", yarn.id()));
            }
        }
        for (String used : usedYarns(warp, cordId, wasteId, design, start, top)) {
            if (!ids.contains(used)) {
                throw new Refused("yarns.missing", Map.of("id", used));
            }
        }
    }

    private static List<String> usedYarns(Warp warp, String cordId, String wasteId, Design design, End start, Top top) {
        List<String> used =
                new ArrayList<>(List.of(warp.yarnId(), cordId, wasteId, design.firstYarnId(), design.lastYarnId()));
        for (Stripes.Stripe stripe : design.stripes().others()) {
            used.add(stripe.yarnId());
        }
        used.addAll(ownYarns(start));
        if (top instanceof Top.OnItsOwn own) {
            used.addAll(ownYarns(own.end()));
        }
        return used;
    }

    private static List<String> ownYarns(End end) {
        List<String> own = new ArrayList<>();
        for (Block block : end.blocks()) {
            Optional<String> yarn = block.ownYarn();
            if (yarn.isPresent()) {
                own.add(yarn.get());
            }
        }
        return own;
    }

    /** Whether a block is worked with a yarn of its own that this piece doesn't have. */
    public boolean lacksYarn(Block block) {
        return block.ownYarn()
                .filter(id -> yarns.stream().noneMatch(yarn -> yarn.id().equals(id)))
                .isPresent();
    }

    /** The same block for this piece: a yarn that the piece doesn't have gives way to the stripe's. */
    public Block fitted(Block block) {
        return lacksYarn(block)
                ? block.takesYarn().orElseThrow().withMaterial(new Material.OfRole(MaterialRole.WEFT))
                : block;
    }

    /** @throws IllegalArgumentException if there is none */
    public Yarn yarn(String id) {
        return yarns.stream()
                .filter(yarn -> yarn.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new Refused("yarns.none", Map.of("id", id)));
    }

    public Yarn warpYarn() {
        return yarn(warp.yarnId());
    }

    /** The yarn of the design's stripe next to an end. */
    public Yarn stripe(Place place) {
        return yarn(place == Place.START ? design.firstYarnId() : design.lastYarnId());
    }

    /** The yarn that a block of that end is woven with. */
    public Yarn yarnOf(TakesYarn block, Place place) {
        return yarnOf(block.use().material(), place);
    }

    public Yarn yarnOf(Material material, Place place) {
        if (material instanceof Material.Own own) {
            return yarn(own.yarnId());
        }
        MaterialRole role = ((Material.OfRole) material).role();
        return switch (role) {
            case WARP_CORD -> yarn(cordId);
            case WASTE -> yarn(wasteId);
            case WEFT -> stripe(place);
        };
    }

    /**
     * A yarn on this piece's warp as it stands in the cloth. Where the cloth draws in, the ends stand closer and the posts
     * as much farther off, since the posts stay where they are.
     */
    public Setting setting(Yarn yarn) {
        double moved = (warp.ends() - 1) * (warp.sett().spacing() - warp.spacing()) / 2;
        return new Setting(
                warp.ends(),
                warp.spacing(),
                warpYarn().diameter(),
                yarn.diameter(),
                yarn.beaten(),
                loom.posts().map(posts -> new Posts(posts.diameter(), Math.max(0, posts.gap() + moved))));
    }

    /** The share of a yarn's length that is laid in before beating, 0 or more: as measured in use, else as is usual. */
    public double ease(Yarn yarn) {
        return measuredEase(yarn)
                .filter(ease -> ease >= LEAST_EASE && ease <= MOST_EASE)
                .orElse(habits.ease());
    }

    /** The ease that the yarn used for some picks comes to, likely or not: used ÷ worked out − 1. */
    public Optional<Double> measuredEase(Yarn yarn) {
        return yarn.usage().map(usage -> usage.length().mm() / setting(yarn).plain(usage.picks()) - 1);
    }

    /** How many blocks both ends have. */
    public int countBlocks() {
        return Stream.of(Place.values())
                .mapToInt(place -> end(place).blocks().size())
                .sum();
    }

    /** The blocks of an end in weaving order; those of a top that follows the start are reflected and free. */
    public End end(Place place) {
        if (place == Place.START) {
            return start;
        }
        if (top instanceof Top.OnItsOwn own) {
            return own.end();
        }
        return start.without(((Top.FollowsStart) top).leftOut()).reflected().withFinishesAtTheEdge(Place.TOP);
    }

    public boolean topFollows() {
        return top instanceof Top.FollowsStart;
    }

    /** Measures shown in this piece's units. */
    public Shown shown() {
        return new Shown(habits.units());
    }

    /** Whether a cut is counted in widths of the loom across its posts; where it has none, in those of the warp. */
    public boolean countsInLoomWidths() {
        return habits.widthsOf() == Habits.WidthsOf.LOOM && loom.uprights().isPresent();
    }

    /** What a cut is held against when counting widths, mm, more than 0. */
    public double reference() {
        double nominal = warp.nominalWidth();
        if (!countsInLoomWidths()) {
            return nominal;
        }
        Setting setting = setting(warpYarn());
        return setting.posts()
                .map(posts -> setting.span() + setting.warp() + 2 * (posts.gap() + posts.diameter()))
                .orElse(nominal);
    }

    /** Whether any yarn of that id is needed, for itself or for a bundle, so that it can't be taken away. */
    public boolean uses(String yarnId) {
        boolean wound =
                yarns.stream().flatMap(yarn -> yarn.bundle().stream()).anyMatch(bundle -> bundle.of(yarnId) > 0);
        return wound || usedYarns(warp, cordId, wasteId, design, start, top).contains(yarnId);
    }

    /** The block of that id in an end, if it is there. */
    public Optional<Block> block(Place place, String id) {
        return end(place).block(id);
    }

    public Piece withTitle(String other) {
        return new Piece(
                other, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withNote(String other) {
        return new Piece(
                title, other, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    /** What it is for; empty if nobody said so. */
    public Optional<MadeFor> madeFor() {
        return destiny.madeFor();
    }

    public Piece withMadeFor(Optional<MadeFor> other) {
        return withDestiny(destiny.withMadeFor(other));
    }

    public Piece withDestiny(Destiny other) {
        return new Piece(
                title, note, other, loom, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withLoom(Loom other) {
        return new Piece(
                title, note, destiny, other, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withWarp(Warp other) {
        return new Piece(
                title, note, destiny, loom, other, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withYarns(List<Yarn> other) {
        return new Piece(
                title, note, destiny, loom, warp, other, cordId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withCord(String otherId) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, otherId, wasteId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withWaste(String otherId) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, otherId, design, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withDesign(Design other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, other, habits, start, top, ticks, measures,
                meant);
    }

    public Piece withHabits(Habits other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, other, start, top, ticks, measures,
                meant);
    }

    public Piece withStart(End other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, other, top, ticks, measures,
                meant);
    }

    public Piece withTop(Top other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, other, ticks, measures,
                meant);
    }

    public Piece withTicks(Ticks other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, top, other, measures,
                meant);
    }

    public Piece withMeasures(Measures other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, other,
                meant);
    }

    public Piece withMeant(Meant other) {
        return new Piece(
                title, note, destiny, loom, warp, yarns, cordId, wasteId, design, habits, start, top, ticks, measures,
                other);
    }

    /** Another stack for an end; a top that followed the start stands on its own from then on. */
    public Piece withEnd(Place place, End other) {
        return place == Place.START ? withStart(other) : withTop(new Top.OnItsOwn(other));
    }
}

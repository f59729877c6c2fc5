package thrumwright.block;

import java.util.List;

/** A block of plain weave: picks over and under the ends by turns, each in a shed. */
public sealed interface PlainWeave extends YarnBlock permits OrderingCord, PlainBand, SlitBand, SpreadHeader {
    @Override
    default boolean plainWeave() {
        return true;
    }

    /** n·t. */
    @Override
    default double height(Setting setting) {
        return rowCount(setting) * setting.beaten();
    }

    /** n(N−1)ℓ + (n−1)·turn. */
    @Override
    default double length(Setting setting) {
        return setting.plain(rowCount(setting));
    }

    @Override
    default List<Row> rows(Setting setting, Course before) {
        return RowList.plain(rowCount(setting), before, use().from(), firstShed());
    }

    @Override
    default List<Strand> strands(Setting setting, List<Row> rows) {
        return List.of(new Strand(PlainBand.plainLegs(setting, rows)));
    }

    /** The key of the sentence that tells how its picks go. */
    default String weaving(Setting setting) {
        return rowCount(setting) > 1 ? "plain.weave" : "plain.weave-one";
    }

    @Override
    default List<String> ownPlaces() {
        return List.of("shed");
    }
}

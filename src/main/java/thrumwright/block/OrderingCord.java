package thrumwright.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import thrumwright.cord.Route;
import thrumwright.cord.Visit;

/**
 * A cord woven through the bare warp and tied to the loom's posts: it spaces the ends and gives the weaving a floor. On a
 * loom without posts it is tied to the outermost warp ends.
 *
 * @param picks how often it crosses, 1 or more
 * @param firstShed the shed of its first pick; empty: the next in turn
 */
public record OrderingCord(Tag tag, Use use, int picks, Optional<Shed> firstShed) implements PlainWeave {
    public OrderingCord {
        Objects.requireNonNull(tag);
        Objects.requireNonNull(use);
        Objects.requireNonNull(firstShed);
        Amount.checkRows(picks, "picks");
    }

    /**
     * n(N−1)ℓ + 2n·a + (n−1)·w, where a is the way from the edge end out to a post and w the way round it. On a loom
     * without posts as a plain band, and at both ends of the cord once round the edge end, πD each, before it is knotted.
     */
    @Override
    public double length(Setting setting) {
        if (setting.posts().isEmpty()) {
            return setting.plain(picks) + 2 * Math.PI * setting.gauge();
        }
        Beyond beyond = Beyond.of(setting, setting.posts().get());
        double woven = (double) picks * (setting.ends() - 1) * setting.space();
        return woven + 2 * picks * beyond.out() + (picks - 1) * beyond.round();
    }

    /**
     * What lies beyond the edge end.
     *
     * @param out a: from the edge end's top to where the cord meets the post
     * @param round w: round the post from there to where it leaves
     */
    private record Beyond(double out, double round) {
        static Beyond of(Setting setting, Posts posts) {
            double r = setting.weavingRadius();
            double big = postRadius(setting, posts);
            double apart = posts.gap() + (setting.warp() + posts.diameter()) / 2;
            double lean = Math.asin(Math.min(1, (big - r) / apart));
            if (lean <= setting.wrapAngle()) {
                double out = Math.sqrt(Math.max(0, apart * apart - (big - r) * (big - r))) - r * lean;
                return new Beyond(out, big * (Math.PI + 2 * lean));
            }
            return pastTheEdge(setting, big, apart + setting.spacing());
        }

        /** A big post close by draws the cord off the edge end: it runs on from the end before that, on the other side. */
        private static Beyond pastTheEdge(Setting setting, double big, double apart) {
            double r = setting.weavingRadius();
            double lean = Math.asin(Math.min(1, (big + r) / apart));
            double straight = Math.sqrt(Math.max(0, apart * apart - (big + r) * (big + r)));
            return new Beyond(straight + r * lean - setting.space(), big * (Math.PI + 2 * lean));
        }
    }

    private static double postRadius(Setting setting, Posts posts) {
        return (posts.diameter() + setting.beaten()) / 2;
    }

    @Override
    public List<Strand> strands(Setting setting, List<Row> rows) {
        return setting.posts()
                .map(posts -> List.of(new Strand(postLegs(setting, posts, rows))))
                .orElseGet(() -> List.of(new Strand(tiedLegs(setting, rows))));
    }

    /** Once round the end where the cord begins, through the warp, and once round the end where it stops. */
    private static List<Leg> tiedLegs(Setting setting, List<Row> rows) {
        List<Leg> legs = new ArrayList<>(PlainBand.plainLegs(setting, rows));
        Row first = rows.get(0);
        Row last = rows.get(rows.size() - 1);
        legs.add(0, tie(setting, first, 0, 0.5 * setting.beaten()));
        legs.add(tie(setting, last, setting.ends() - 1, (rows.size() - 0.5) * setting.beaten()));
        return legs;
    }

    private static Leg tie(Setting setting, Row row, int end, double y) {
        Way way = Way.of(setting, row);
        return Leg.level(way.round(end, row.shed().orElseThrow().over(way.fromLeft(end))), y);
    }

    /** Each pick runs from the outermost point of one post to that of the other; the first and last are tied on. */
    private static List<Leg> postLegs(Setting setting, Posts posts, List<Row> rows) {
        List<Leg> legs = new ArrayList<>();
        double radius = postRadius(setting, posts);
        for (int i = 0; i < rows.size(); i++) {
            Way way = Way.of(setting, rows.get(i));
            Shed shed = rows.get(i).shed().orElseThrow();
            List<Visit> visits = new ArrayList<>(way.plain(shed));
            visits.add(0, way.post(posts, radius, false, shed.over(way.fromLeft(0))));
            visits.add(way.post(posts, radius, true, shed.over(way.fromLeft(setting.ends() - 1))));
            Route route = new Route(
                    visits,
                    Way.angle(i > 0, way.outermost(false)),
                    Way.angle(i < rows.size() - 1, way.outermost(true)));
            legs.add(Leg.level(route, (i + 0.5) * setting.beaten()));
        }
        return legs;
    }

    @Override
    public boolean tied() {
        return true;
    }

    @Override
    public List<String> told(Setting setting) {
        boolean posts = setting.posts().isPresent();
        List<String> told = new ArrayList<>();
        told.add(posts ? "ordering-cord.tie" : "ordering-cord.tie-without");
        told.add("ordering-cord.weave");
        if (picks > 1) {
            told.add(posts ? "ordering-cord.round" : "ordering-cord.back");
        }
        told.add(posts ? "ordering-cord.tie-end" : "ordering-cord.tie-end-without");
        told.add("ordering-cord.even");
        return told;
    }

    @Override
    public String whole() {
        return "ordering-cord.whole";
    }

    @Override
    public List<String> stages(int made) {
        String even = "ordering-cord.stage.even";
        return made == 1
                ? List.of("ordering-cord.stage.weave", even)
                : List.of("ordering-cord.stage.weave", "ordering-cord.stage.round", even);
    }

    @Override
    public String key() {
        return "ordering-cord";
    }

    @Override
    public Optional<Amount> extent() {
        return Optional.of(new Amount.Picks(picks));
    }

    @Override
    public boolean startOnly() {
        return true;
    }

    @Override
    public <R> R of(YarnCases<R> cases) {
        return cases.orderingCord(this);
    }

    @Override
    public OrderingCord mirrored() {
        return this;
    }

    @Override
    public OrderingCord withTag(Tag other) {
        return new OrderingCord(other, use, picks, firstShed);
    }

    @Override
    public OrderingCord withUse(Use other) {
        return new OrderingCord(tag, other, picks, firstShed);
    }

    @Override
    public OrderingCord withRows(int other) {
        return withPicks(other);
    }

    public OrderingCord withPicks(int other) {
        return new OrderingCord(tag, use, other, firstShed);
    }

    @Override
    public OrderingCord withFirstShed(Optional<Shed> other) {
        return new OrderingCord(tag, use, picks, other);
    }
}

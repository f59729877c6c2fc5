package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thrumwright.editor.look.Swatch;
import thrumwright.piece.Piece;
import thrumwright.yarn.Bundle;
import thrumwright.yarn.Strands;
import thrumwright.yarn.Yarn;

/** What a bundle is wound from: for each yarn which one and how many strands, and a place for one more. */
final class StrandFields {
    private final Desk desk;
    private final Subject<Yarn> bundle;
    private final int parts;

    /** @param bundle a yarn that is wound from strands */
    StrandFields(Desk desk, Subject<Yarn> bundle) {
        this.desk = desk;
        this.bundle = bundle;
        this.parts = parts(bundle.in().apply(desk.session().shown()).orElseThrow());
    }

    /** How many yarns are wound into it, 0 where it is no bundle. */
    static int parts(Yarn yarn) {
        return yarn.bundle().map(wound -> wound.parts().size()).orElse(0);
    }

    /** Yarns that can be strands. */
    static List<Yarn> single(Piece piece) {
        return piece.yarns().stream().filter(yarn -> yarn.bundle().isEmpty()).toList();
    }

    void addTo(FieldPanel panel) {
        for (int i = 0; i < parts; i++) {
            int at = i;
            panel.about(bundle)
                    .numbered(i + 1)
                    .choice("yarn.strand", () -> choices(at), yarn -> id(yarn, at), (yarn, id) -> chosen(yarn, at, id));
            panel.about(part(i))
                    .numbered(i + 1)
                    .whole("yarn.strands", Strands::count, (part, count) -> new Strands(part.yarn(), count));
        }
        if (choices(parts).size() > 1) {
            panel.about(bundle)
                    .choice(
                            "yarn.more",
                            () -> choices(parts),
                            yarn -> id(yarn, parts),
                            (yarn, id) -> chosen(yarn, parts, id));
        }
    }

    private Subject<Strands> part(int at) {
        return new Subject<>(
                bundle.key() + "/strands/" + at,
                bundle.thing(),
                piece -> bundle.in()
                        .apply(piece)
                        .filter(yarn -> parts(yarn) > at)
                        .map(yarn -> list(yarn).get(at)),
                (piece, other) -> bundle.in()
                        .apply(piece)
                        .map(yarn -> bundle.with().apply(piece, replaced(yarn, at, Optional.of(other))))
                        .orElse(piece));
    }

    private static List<Strands> list(Yarn yarn) {
        return yarn.bundle().map(Bundle::parts).orElse(List.of());
    }

    private static Optional<String> id(Yarn yarn, int at) {
        return parts(yarn) > at ? Optional.of(list(yarn).get(at).yarn().id()) : Optional.empty();
    }

    /** The yarns that aren't in it yet, and none, where that leaves something. */
    private List<Choice<Optional<String>>> choices(int at) {
        Piece piece = desk.session().shown();
        Yarn yarn = bundle.in().apply(piece).orElseThrow();
        List<Choice<Optional<String>>> all = new ArrayList<>();
        if (parts(yarn) > 1 || at == parts(yarn)) {
            all.add(Choice.of(Optional.empty(), desk.texts().say("yarns.strand.none")));
        }
        for (Yarn each : single(piece)) {
            if (yarn.strandsOf(each.id()) == 0 || id(yarn, at).equals(Optional.of(each.id()))) {
                all.add(new Choice<>(Optional.of(each.id()), each.name(), new Swatch(each.colour())));
            }
        }
        return all;
    }

    private Yarn chosen(Yarn yarn, int at, Optional<String> id) {
        int count = parts(yarn) > at ? list(yarn).get(at).count() : 1;
        return replaced(
                yarn, at, id.map(other -> new Strands(desk.session().piece().yarn(other), count)));
    }

    private static Yarn replaced(Yarn yarn, int at, Optional<Strands> other) {
        List<Strands> all = new ArrayList<>(list(yarn));
        if (at < all.size()) {
            all.remove(at);
        }
        other.ifPresent(part -> all.add(at, part));
        return yarn.withThickness(new Bundle(all));
    }
}

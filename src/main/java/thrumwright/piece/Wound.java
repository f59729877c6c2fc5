package thrumwright.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import thrumwright.measure.Refused;
import thrumwright.yarn.Yarn;

/** Bundles among yarns. */
final class Wound {
    private Wound() {}

    /**
     * The same yarns, each bundle with its strands' yarns as they are among them now.
     *
     * @throws Refused if the yarn of a strand isn't there, or is a bundle
     */
    static List<Yarn> from(List<Yarn> yarns) {
        List<Yarn> wound = new ArrayList<>();
        for (Yarn yarn : yarns) {
            wound.add(yarn.bundle().isPresent() ? yarn.woundFrom(part -> among(yarns, part, yarn)) : yarn);
        }
        // the very same list, so that a piece shares it with what it was made from
        return List.copyOf(wound.equals(yarns) ? yarns : wound);
    }

    private static Yarn among(List<Yarn> yarns, Yarn part, Yarn bundle) {
        return yarns.stream()
                .filter(yarn -> yarn.id().equals(part.id()))
                .findFirst()
                .orElseThrow(() -> new Refused("wound.missing", Map.of("yarn", part.name(), "bundle", bundle.name())));
    }
}

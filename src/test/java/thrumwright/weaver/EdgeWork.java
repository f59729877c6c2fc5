package thrumwright.weaver;

import java.util.List;

/**
 * What becomes of the warp ends at an edge, whoever did it.
 *
 * @param bunches the warp ends that are held together, row by row, the first row next to the cloth
 * @param parts into how many strands each bunch is divided, to be plied or plaited; else 1
 * @param turns of a wrapping round each; else 0
 * @param turned each end's way round its neighbours, row by row in the order of working
 */
record EdgeWork(List<List<Bunch>> bunches, int parts, int turns, List<List<Passes>> turned) {
    EdgeWork {
        bunches = List.copyOf(bunches);
        turned = List.copyOf(turned);
    }

    /** Warp ends that are held together: so many, from the one counted {@code first} from 0 at the left. */
    record Bunch(int first, int count) {}
}

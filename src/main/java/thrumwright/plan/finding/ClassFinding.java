package thrumwright.plan.finding;

import java.util.List;

/**
 * Something that a teacher should know of a class.
 *
 * @param members whom it is about, by their positions from 0, in order; none: the class as a whole
 */
public record ClassFinding(Finding finding, List<Integer> members) {
    public ClassFinding {
        members = List.copyOf(members);
    }

    /** Whether it is about the class as a whole. */
    public boolean ofClass() {
        return members.isEmpty();
    }
}

package thrumwright.store;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where the members of a list are after some in its middle were changed, added or taken away. */
final class MemberMoves {
    /** What is unknown of a member stands at its position. */
    private static final Pattern PLACE = Pattern.compile("members#(\\d+)");

    private final int before;
    private final int after;
    private final int old;
    private final int shift;

    MemberMoves(List<?> from, List<?> to) {
        int most = Math.min(from.size(), to.size());
        int same = 0;
        while (same < most && from.get(same).equals(to.get(same))) {
            same++;
        }
        int sameAtEnd = 0;
        while (sameAtEnd < most - same
                && from.get(from.size() - 1 - sameAtEnd).equals(to.get(to.size() - 1 - sameAtEnd))) {
            sameAtEnd++;
        }
        this.before = to.size() - sameAtEnd;
        this.after = from.size() - sameAtEnd;
        this.old = from.size();
        this.shift = to.size() - from.size();
    }

    /** The place of something unknown in the new list; a place that is nobody's where its member is gone. */
    String place(String place) {
        Matcher member = PLACE.matcher(place);
        if (!member.matches()) {
            return place;
        }
        int index = Integer.parseInt(member.group(1));
        int now = index >= after && index < old ? index + shift : index;
        boolean gone = index < after && index >= before;
        return gone ? "gone " + place : "members#" + now;
    }
}

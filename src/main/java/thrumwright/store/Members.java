package thrumwright.store;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;

/**
 * The members of a JSON object in the order in which they stand there, each known by its place as well. Objects mostly have few,
 * which are found sooner by going through them than by any index.
 */
final class Members extends AbstractMap<String, Node> {
    private static final int FEW = 12;

    private String[] names = new String[6];
    private Node[] nodes = new Node[6];
    private int size;
    /** A bit for each name, by its hash: most that are asked for and aren't there have none. */
    private long bits;

    private Map<String, Integer> places;

    /** The same as places, for members that come from elsewhere. */
    static Members of(Map<String, Node> fields) {
        if (fields instanceof Members already) {
            return already;
        }
        Members members = new Members();
        fields.forEach(members::add);
        return members;
    }

    /** @param name that no member has yet, see {@link #at} */
    void add(String name, Node node) {
        if (size == names.length) {
            names = Arrays.copyOf(names, 2 * size);
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        bits |= bit(name);
        names[size] = name;
        nodes[size] = node;
        if (places != null) {
            places.put(name, size);
        }
        size++;
    }

    /** Where a member stands, from 0; −1 if there is none of that name. */
    int at(String name) {
        return at(name, 0);
    }

    /**
     * The same.
     *
     * @param from where to look first, 0 to the number of members
     */
    int at(String name, int from) {
        if ((bits & bit(name)) == 0) {
            return -1;
        }
        if (size > FEW) {
            return places().getOrDefault(name, -1);
        }
        for (int i = from; i < size; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        for (int i = 0; i < from; i++) {
            if (names[i].equals(name)) {
                return i;
            }
        }
        return -1;
    }

    private static long bit(String name) {
        return 1L << name.hashCode();
    }

    private Map<String, Integer> places() {
        if (places == null) {
            places = new HashMap<>();
            for (int i = 0; i < size; i++) {
                places.put(names[i], i);
            }
        }
        return places;
    }

    String name(int place) {
        return names[place];
    }

    Node node(int place) {
        return nodes[place];
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public boolean containsKey(Object name) {
        return at((String) name) >= 0;
    }

    @Override
    public Node get(Object name) {
        int place = at((String) name);
        return place < 0 ? null : nodes[place];
    }

    @Override
    public Set<Entry<String, Node>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<String, Node>> iterator() {
                return new InOrder();
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    private final class InOrder implements Iterator<Entry<String, Node>> {
        private int next;

        @Override
        public boolean hasNext() {
            return next < size;
        }

        @Override
        public Entry<String, Node> next() {
            if (next >= size) {
                throw new NoSuchElementException();
            }
            next++;
            return Map.entry(names[next - 1], nodes[next - 1]);
        }
    }
}

package thrumwright.editor.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All that was done to a piece since it was opened; there is no limit. */
final class History {
    /** One change with the states on both sides. */
    record Done(String name, State before, State after) {}

    private final List<Done> all = new ArrayList<>();
    private int position;

    /** Adds what was done; whatever was undone before is forgotten. */
    void add(Done done) {
        all.subList(position, all.size()).clear();
        all.add(done);
        position = all.size();
    }

    /** The change that undo would take back. */
    Optional<Done> undoable() {
        return position == 0 ? Optional.empty() : Optional.of(all.get(position - 1));
    }

    /** The change that redo would bring again. */
    Optional<Done> redoable() {
        return position == all.size() ? Optional.empty() : Optional.of(all.get(position));
    }

    State undo() {
        position--;
        return all.get(position).before();
    }

    State redo() {
        position++;
        return all.get(position - 1).after();
    }

    List<String> names() {
        return all.stream().map(Done::name).toList();
    }

    int position() {
        return position;
    }
}

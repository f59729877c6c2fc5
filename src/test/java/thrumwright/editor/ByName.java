package thrumwright.editor;

import java.awt.Component;
import java.awt.Container;

/** Looks components up by their names. */
final class ByName {
    private ByName() {}

    /** The first of that name, however deep it lies; null if there is none. */
    static Component in(Container container, String name) {
        for (Component child : container.getComponents()) {
            Component found =
                    name.equals(child.getName()) ? child : child instanceof Container inner ? in(inner, name) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}

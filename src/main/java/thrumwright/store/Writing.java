package thrumwright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import thrumwright.measure.Length;

/** An object that is being written: known fields in their order, then the unknown ones that belong here. */
final class Writing {
    private final Map<String, Node> fields = new LinkedHashMap<>();

    Writing with(String name, Node value) {
        fields.put(name, value);
        return this;
    }

    Writing with(String name, String value) {
        return with(name, Node.Text.of(value));
    }

    Writing with(String name, int value) {
        return with(name, Node.Num.of(value));
    }

    Writing with(String name, double value) {
        String digits = value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
        return with(name, new Node.Num(digits, Node.Spot.NOWHERE));
    }

    Writing with(String name, Length value) {
        return with(name, value.text());
    }

    Writing with(String name, Optional<Length> value) {
        value.ifPresent(length -> with(name, length));
        return this;
    }

    Writing with(String name, boolean value, boolean usual) {
        return value == usual ? this : with(name, Node.Flag.of(value));
    }

    Writing withText(String name, String value) {
        return value.isEmpty() ? this : with(name, value);
    }

    Node.Obj done(Unknown unknown, String place) {
        unknown.at(place).forEach(fields::putIfAbsent);
        return new Node.Obj(fields, Node.Spot.NOWHERE);
    }
}

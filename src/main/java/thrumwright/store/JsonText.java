package thrumwright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Plain values as JSON text, for other programs to read. */
public final class JsonText {
    private JsonText() {}

    /**
     * Maps, lists, texts, numbers, truth values and null, indented.
     *
     * @throws IllegalArgumentException for anything else, and for numbers that aren't finite
     */
    public static String of(Object value) {
        return Json.write(node(value));
    }

    private static Node node(Object value) {
        if (value == null) {
            return new Node.Nothing(Node.Spot.NOWHERE);
        } else if (value instanceof Map<?, ?> map) {
            Map<String, Node> fields = new LinkedHashMap<>();
            map.forEach((name, inner) -> fields.put(String.valueOf(name), node(inner)));
            return new Node.Obj(fields, Node.Spot.NOWHERE);
        } else if (value instanceof List<?> list) {
            List<Node> items = new ArrayList<>();
            list.forEach(item -> items.add(node(item)));
            return new Node.Arr(items, Node.Spot.NOWHERE);
        } else if (value instanceof String text) {
            return Node.Text.of(text);
        } else if (value instanceof Boolean flag) {
            return Node.Flag.of(flag);
        } else if (value instanceof Integer || value instanceof Long) {
            return new Node.Num(value.toString(), Node.Spot.NOWHERE);
        } else if (value instanceof Double number && Double.isFinite(number)) {
            return new Node.Num(Double.toString(Math.round(number * 1e6) / 1e6), Node.Spot.NOWHERE);
        }
        throw new IllegalArgumentException("no JSON for " + value);
    }
}

package thrumwright.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** As much of JSON Schema (draft 2020-12) as the files' own schema uses; any other word in it is a mistake. */
record Schema(Node.Obj whole) {
    private static final List<String> SAID = List.of("$schema", "$defs", "title", "description");

    /** What is wrong with a value, each with its place; empty if it is valid. */
    List<String> problems(Node value) {
        List<String> found = new ArrayList<>();
        check(whole, value, "", found);
        return found;
    }

    Node.Obj definition(String name) {
        return (Node.Obj) ((Node.Obj) whole.fields().get("$defs")).fields().get(name);
    }

    private void check(Node.Obj schema, Node value, String at, List<String> found) {
        for (Map.Entry<String, Node> each : schema.fields().entrySet()) {
            Node said = each.getValue();
            switch (each.getKey()) {
                case "$ref" -> check(definition(text(said).substring("#/$defs/".length())), value, at, found);
                case "type" -> require(isOf(text(said), value), at + " is no " + text(said), found);
                case "const" -> require(same(said, value), at + " isn't " + shown(said), found);
                case "enum" ->
                    require(
                            ((Node.Arr) said).items().stream().anyMatch(one -> same(one, value)),
                            at + " is another",
                            found);
                case "anyOf" ->
                    require(
                            ((Node.Arr) said).items().stream().anyMatch(one -> fits(one, value)),
                            at + " fits none",
                            found);
                case "minimum" ->
                    require(!isNumber(value) || number(value).compareTo(number(said)) >= 0, at + " too small", found);
                case "maximum" ->
                    require(!isNumber(value) || number(value).compareTo(number(said)) <= 0, at + " too large", found);
                case "maxLength" ->
                    require(
                            !(value instanceof Node.Text t)
                                    || t.value().length() <= number(said).intValue(),
                            at + " too long",
                            found);
                case "maxItems" ->
                    require(
                            !(value instanceof Node.Arr a)
                                    || a.items().size() <= number(said).intValue(),
                            at + " too many",
                            found);
                case "required" -> required((Node.Arr) said, value, at, found);
                case "properties" -> properties((Node.Obj) said, value, at, found);
                case "items" -> items((Node.Obj) said, value, at, found);
                default -> require(SAID.contains(each.getKey()), "the schema knows no “" + each.getKey() + "”", found);
            }
        }
    }

    private boolean fits(Node schema, Node value) {
        List<String> inner = new ArrayList<>();
        check((Node.Obj) schema, value, "", inner);
        return inner.isEmpty();
    }

    private static void required(Node.Arr names, Node value, String at, List<String> found) {
        if (value instanceof Node.Obj object) {
            names.items()
                    .forEach(name ->
                            require(object.fields().containsKey(text(name)), at + " lacks " + text(name), found));
        }
    }

    private void properties(Node.Obj known, Node value, String at, List<String> found) {
        if (value instanceof Node.Obj object) {
            known.fields().forEach((name, schema) -> {
                if (object.fields().containsKey(name)) {
                    check((Node.Obj) schema, object.fields().get(name), at + "/" + name, found);
                }
            });
        }
    }

    private void items(Node.Obj schema, Node value, String at, List<String> found) {
        if (value instanceof Node.Arr array) {
            for (int i = 0; i < array.items().size(); i++) {
                check(schema, array.items().get(i), at + "/" + i, found);
            }
        }
    }

    private static void require(boolean holds, String problem, List<String> found) {
        if (!holds) {
            found.add(problem);
        }
    }

    private static boolean isOf(String type, Node value) {
        return switch (type) {
            case "object" -> value instanceof Node.Obj;
            case "array" -> value instanceof Node.Arr;
            case "string" -> value instanceof Node.Text;
            case "boolean" -> value instanceof Node.Flag;
            case "number" -> isNumber(value);
            case "integer" ->
                isNumber(value) && number(value).stripTrailingZeros().scale() <= 0;
            default -> throw new IllegalArgumentException(type);
        };
    }

    private static boolean isNumber(Node value) {
        return value instanceof Node.Num;
    }

    private static BigDecimal number(Node value) {
        return new BigDecimal(((Node.Num) value).digits());
    }

    private static boolean same(Node one, Node other) {
        return shown(one).equals(shown(other));
    }

    private static String shown(Node node) {
        return node instanceof Node.Text text
                ? "“" + text.value() + "”"
                : node instanceof Node.Num num ? num.digits() : node.getClass().getSimpleName();
    }

    private static String text(Node node) {
        return ((Node.Text) node).value();
    }
}

package thrumwright.store;

/** An object that stands in a field of its own, as the only one. */
final class Within<T> extends Declared<T> {
    private final Entry<T> field;

    Within(String name, Format<T> inside) {
        this.field = needed(name, inside);
    }

    @Override
    public T make(Fields in) throws FileProblem {
        return field.of(in);
    }

    @Override
    public void write(T value, Writing out) {
        out.put(field, value);
    }
}

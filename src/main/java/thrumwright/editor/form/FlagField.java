package thrumwright.editor.form;

import java.util.function.BiFunction;
import java.util.function.Predicate;
import javax.swing.JCheckBox;

/** A field that is so or not. */
final class FlagField<T> implements Field {
    private final Holder<T> holder;
    private final Predicate<T> get;
    private final JCheckBox component;

    FlagField(Holder<T> holder, String label, Predicate<T> get, BiFunction<T, Boolean, T> set, JCheckBox component) {
        this.holder = holder;
        this.get = get;
        this.component = component;
        refresh();
        component.addActionListener(event -> {
            holder.change(label, part -> set.apply(part, component.isSelected()), null);
            // where it must stay as it was
            refresh();
        });
    }

    @Override
    public void refresh() {
        component.setSelected(holder.value().filter(get).isPresent());
    }
}

package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComboBox;
import thrumwright.editor.look.Quiet;

/** A field to choose from a list. */
final class ChoiceField<T, V> implements Field {
    private final Holder<T> holder;
    private final BinaryOperator<String> label;
    private final Supplier<List<Choice<V>>> choices;
    private final Function<T, V> get;
    private final BiFunction<T, V, T> set;
    private final JComboBox<Choice<V>> component;
    private final Quiet quiet = new Quiet();

    ChoiceField(
            Holder<T> holder,
            BinaryOperator<String> label,
            Supplier<List<Choice<V>>> choices,
            Function<T, V> get,
            BiFunction<T, V, T> set,
            JComboBox<Choice<V>> component) {
        this.holder = holder;
        this.label = label;
        this.choices = choices;
        this.get = get;
        this.set = set;
        this.component = component;
        refresh();
        component.addActionListener(event -> chosen());
    }

    private void chosen() {
        if (quiet.now() || component.getSelectedIndex() < 0) {
            return;
        }
        Choice<V> chosen = component.getItemAt(component.getSelectedIndex());
        V value = chosen.value();
        holder.change(label.apply(before(), chosen.text()), part -> set.apply(part, value), null);
    }

    /** What is chosen in the piece, in words. */
    private String before() {
        Optional<V> value = holder.value().map(get);
        return choices.get().stream()
                .filter(choice -> value.filter(choice.value()::equals).isPresent())
                .map(Choice::text)
                .findFirst()
                .orElse("");
    }

    @Override
    public void refresh() {
        quiet.during(this::follow);
    }

    private void follow() {
        List<Choice<V>> wanted = choices.get();
        if (!wanted.equals(shown())) {
            component.removeAllItems();
            wanted.forEach(component::addItem);
        }
        Optional<V> value = holder.value().map(get);
        int index = -1;
        for (int i = 0; i < wanted.size(); i++) {
            if (value.isPresent() && wanted.get(i).value().equals(value.get())) {
                index = i;
            }
        }
        if (component.getSelectedIndex() != index) {
            component.setSelectedIndex(index);
        }
    }

    private List<Choice<V>> shown() {
        List<Choice<V>> shown = new ArrayList<>();
        for (int i = 0; i < component.getItemCount(); i++) {
            shown.add(component.getItemAt(i));
        }
        return shown;
    }
}
